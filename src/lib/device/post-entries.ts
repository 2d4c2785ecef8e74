import type { Entry } from '$lib/outing/entry.ts';
import { sendWaiting, type Acknowledged } from './outbox.ts';
import type { PhoneDatabase } from './phone-database.ts';
import { mark, runnersWaiting, storeOf } from './written-entries.ts';

const PATIENCE_MS = 8000;

/**
 * Sends what waits here, each runner's own. The server takes only what belongs to whoever is signed
 * in; what somebody else wrote on this phone waits until they are back.
 *
 * @returns how many still wait
 */
export async function sendAll(database: PhoneDatabase): Promise<number> {
	let left = 0;
	for (const runnerKey of await runnersWaiting(database)) {
		const send = async (entries: readonly Entry[]) => {
			const told = await post(runnerKey, entries);
			// Before they count as settled: after a kill they must not pass for kept.
			await mark(
				database,
				told.refused.map(({ id }) => id),
				'refused'
			);
			return told;
		};
		left += (await sendWaiting(storeOf(database, runnerKey), send)).waiting;
	}
	return left;
}

async function post(runnerKey: string, entries: readonly Entry[]): Promise<Acknowledged> {
	const answer = await fetch('/prompter/entries', {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ runnerKey, entries }),
		redirect: 'error',
		signal: AbortSignal.timeout(PATIENCE_MS)
	});
	if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
	return (await answer.json()) as Acknowledged;
}
