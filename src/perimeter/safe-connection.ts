import { error, type Handle } from '@sveltejs/kit';
import { faultText } from '$words/faults.ts';

const THIS_COMPUTER = new Set(['localhost', '127.0.0.1', '[::1]']);

/**
 * Health answers and sign-in travel over https, or stay on the computer that runs the server. Over
 * plain http from elsewhere every page says so and does nothing.
 */
export const safeConnection: Handle = ({ event, resolve }) => {
	const { protocol, hostname } = event.url;
	if (protocol !== 'https:' && !THIS_COMPUTER.has(hostname)) {
		error(403, { code: 'needs-https', message: faultText('needs-https') });
	}
	return resolve(event);
};
