import type { House } from '$lib/server/open-house.ts';
import type { Signed } from '$lib/server/auth.ts';

declare global {
	namespace App {
		interface Error {
			/** Looked up in the words; never a message made from data. */
			code: string;
			/** Shown to the person and logged beside the stack, so that the two can be matched. */
			id?: string;
			message: string;
		}

		interface Locals {
			house: House;
			/** Who asks, or null for somebody without an account. */
			runner: Signed | null;
			/** When the request came, epoch milliseconds: one clock for the whole request. */
			now: number;
		}
	}
}

export {};
