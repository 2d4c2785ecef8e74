import type { RequestEvent } from '@sveltejs/kit';
import { numberToCall } from '$lib/server/number-to-call.ts';
import { visitor } from '$lib/server/visitor.ts';

/** The number to call, for a page that shows it to whoever asks. */
export async function numberFor({
	locals: { house, runner },
	cookies
}: Pick<RequestEvent, 'locals' | 'cookies'>): Promise<string | null> {
	return numberToCall(house, runner, await visitor(house, runner, cookies));
}
