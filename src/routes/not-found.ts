import { error } from '@sveltejs/kit';
import { faultText } from '$words/faults.ts';

/** What is not yours is answered as what does not exist. */
export function notFound(): never {
	error(404, { code: 'not-found', message: faultText('not-found') });
}
