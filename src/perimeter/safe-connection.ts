import { error, type Handle } from '@sveltejs/kit';
import { isThisComputer } from '$lib/server/this-computer.ts';
import { faultText } from '$words/faults.ts';

/**
 * Health answers and sign-in travel over https, or stay on the computer that runs the server. Over
 * plain http from elsewhere every page says so and does nothing.
 */
export const safeConnection: Handle = ({ event, resolve }) => {
	if (event.url.protocol !== 'https:' && !isThisComputer(event.url)) {
		error(403, { code: 'needs-https', message: faultText('needs-https') });
	}
	return resolve(event);
};
