import { randomUUID } from 'node:crypto';
import type { HandleServerError } from '@sveltejs/kit';
import { VaultClosed } from '../vault.ts';

/**
 * What we got wrong is logged under an id that the person sees too: id, route and stack, and never
 * a body, a cookie, an address or anything else that a person sent.
 */
export const explainFault: HandleServerError = ({ error, event, status }) => {
	if (status === 404) return { code: 'not-found', message: 'not-found' };
	if (status === 413) return { code: 'too-large', message: 'too-large' };
	if (error instanceof VaultClosed) return { code: 'vault', message: 'vault' };
	const id = randomUUID().slice(0, 8);
	const stack = error instanceof Error ? error.stack : String(error);
	console.error(`${id} ${event.route.id ?? 'no route'}\n${stack}`);
	return { code: 'unexpected', id, message: 'unexpected' };
};
