declare global {
	namespace App {
		interface Error {
			/** Looked up in the words; never a message made from data. */
			code: string;
			/** Shown to the person and logged beside the stack, so that the two can be matched. */
			id?: string;
			message: string;
		}
	}
}

export {};
