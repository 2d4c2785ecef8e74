import { error, type Handle } from '@sveltejs/kit';
import { faultText } from '$words/faults.ts';

/**
 * A form that cannot be read, such as one that was cut off on its way, is no fault of ours. Whichever
 * action asks for it, the answer is 400 in our own words.
 */
export const readableForm: Handle = ({ event, resolve }) => {
	const { request } = event;
	const read = request.formData.bind(request);
	request.formData = async () => {
		try {
			return await read();
		} catch (thrown) {
			// One that is too large says so itself.
			if (thrown instanceof Error && 'status' in thrown) throw thrown;
			error(400, { code: 'bad-request', message: faultText('bad-request') });
		}
	};
	return resolve(event);
};
