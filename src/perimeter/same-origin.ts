import { error, type Handle } from '@sveltejs/kit';
import { faultText } from '$words/faults.ts';

const READING: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS']);

/** What a form of any site may send, and a request that names no type, without asking first. */
const LIKE_A_FORM = /^(application\/x-www-form-urlencoded|multipart\/form-data|text\/plain|$)/i;

/**
 * Forms are taken from our own pages alone, and nothing that changes anything from another site. The
 * framework's own check is turned off for this one: it answers in words of its own.
 */
export const sameOrigin: Handle = ({ event, resolve }) => {
	const { method, headers } = event.request;
	if (READING.has(method)) return resolve(event);
	const origin = headers.get('origin');
	const isForm = LIKE_A_FORM.test(headers.get('content-type') ?? '');
	const isOurs = origin === null ? !isForm : origin === event.url.origin;
	if (!isOurs) error(403, { code: 'cross-site', message: faultText('cross-site') });
	return resolve(event);
};
