import { error, json } from '@sveltejs/kit';
import { MOST_BYTES, readEntries } from '$lib/forms/entries.ts';
import { ConsentMissing } from '$lib/server/consents.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { visitor } from '$lib/server/visitor.ts';
import { faultText } from '$words/faults.ts';
import { runnerKeyOf } from '../runner-key.ts';
import type { RequestHandler } from './$types';

/**
 * What a phone wrote down in outings, as { entries }. Answers { kept, refused }: ids that are safe,
 * and ids with a code that it is no use to send again. Open also while the gate is closed: a sign
 * that was told without a network has to arrive.
 */
export const POST: RequestHandler = async ({ request, cookies, locals }) => {
	const { house, runner, now } = locals;
	if (runner === null) error(404, fault('not-found'));
	// A form of another site cannot send this type without asking first.
	if (!request.headers.get('content-type')?.startsWith('application/json')) {
		error(415, fault('bad-request'));
	}
	const sent = readEntries(await bodyOf(request));
	if (sent === null) error(400, fault('bad-request'));
	// A phone that changed hands must not write on another's account.
	if (sent.runnerKey !== null && sent.runnerKey !== runnerKeyOf(runner.runnerId)) {
		error(409, fault('another-runner'));
	}
	const { timeZone } = await visitor(house, runner, cookies);
	const refused = sent.refused.map((id) => ({ id, code: 'not-an-entry' }));
	try {
		const told = { now, timeZone };
		const { database, vault } = house;
		const kept = await pastOutings.append(database, vault, runner.runnerId, sent.entries, told);
		return json({ kept, refused });
	} catch (thrown) {
		if (!(thrown instanceof ConsentMissing)) throw thrown;
		const unwanted = sent.entries.map(({ id }) => ({ id, code: 'no-consent' }));
		return json({ kept: [], refused: [...refused, ...unwanted] });
	}
};

async function bodyOf(request: Request): Promise<unknown> {
	const tooLarge = () => error(413, fault('too-large'));
	if (Number(request.headers.get('content-length') ?? 0) > MOST_BYTES) tooLarge();
	const text = await request.text();
	if (text.length > MOST_BYTES) tooLarge();
	try {
		return JSON.parse(text);
	} catch {
		return null;
	}
}

const fault = (code: string) => ({ code, message: faultText(code) });
