import { randomUUID } from 'node:crypto';
import type { HandleServerError } from '@sveltejs/kit';
import { VaultClosed } from '$lib/server/vault.ts';
import { faultText } from '$words/faults.ts';

/**
 * What we got wrong is logged under an id that the person sees too: id, route and stack, and never
 * a body, a cookie, an address or anything else that a person sent.
 */
export const explainFault: HandleServerError = ({ error, event, status }) => {
	if (status === 404) return fault('not-found');
	if (status === 413) return fault('too-large');
	// A request that no page of ours sends, such as one in another format: not our slip.
	if (status < 500) return fault('bad-request');
	if (error instanceof VaultClosed) return fault('vault');
	const id = randomUUID().slice(0, 8);
	const stack = error instanceof Error ? error.stack : String(error);
	console.error(`${id} ${event.route.id ?? 'no route'}\n${stack}`);
	return { ...fault('unexpected'), id };
};

const fault = (code: string) => ({ code, message: faultText(code) });
