import type { Kysely } from 'kysely';
import { isStopSign, type Entry } from '../outing/entry.ts';
import { localDate } from '../screening/calendar.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as events from './events.ts';
import * as pains from './pains.ts';
import { countWalk, placeOf } from './past-outings.ts';
import { withoutPulses } from './past-pulses.ts';
import type { Vault } from './vault.ts';

export interface Told {
	/** When the server was told, and the runner's zone. */
	readonly now: number;
	readonly timeZone: string;
}

/**
 * Keeps what a prompter wrote down. The same entry any number of times is kept once, and what follows
 * from it happens once: a sign writes an urgent event of its own day, also when the gate has closed
 * meanwhile; new pain stops runs; an outing that was only walked counts as that day's walk.
 *
 * A pulse is kept only while pulse numbers are on for the runner; what goes with it stays.
 *
 * @returns the ids that are safely dealt with, all of them, in the order given
 * @throws ConsentMissing, VaultClosed; then nothing was kept
 */
export async function append(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	entries: readonly Entry[],
	told: Told
): Promise<readonly string[]> {
	await consents.need(database, runnerId);
	await database.transaction().execute(async (step) => {
		const touched = new Set<string>();
		for (const entry of await withoutPulses(step, vault, runnerId, entries, told.now)) {
			await keepOuting(step, runnerId, entry, told);
			if (!(await keepEntry(step, vault, runnerId, entry, told.now))) continue;
			await follow(step, vault, runnerId, entry, told);
			if (entry.kind === 'ended' || entry.kind === 'phase-done') touched.add(entry.outingRunId);
		}
		for (const id of touched) await countWalk(step, vault, runnerId, id, told.now);
		await dropRemoved(step, runnerId);
	});
	return entries.map(({ id }) => id);
}

async function keepOuting(
	step: Kysely<Database>,
	runnerId: string,
	entry: Entry,
	{ now, timeZone }: Told
): Promise<void> {
	// A phone whose clock runs ahead has not done tomorrow's outing.
	const began_at = Math.min(entry.at, now);
	await step
		.insertInto('past_outing')
		.values({
			runner_id: runnerId,
			id: entry.outingRunId,
			began_at,
			on_date: localDate(began_at, timeZone),
			removed_at: null,
			planned_id: null
		})
		.onConflict((conflict) => conflict.columns(['runner_id', 'id']).doNothing())
		.execute();
	if (entry.kind !== 'started') return;
	await step
		.updateTable('past_outing')
		.set({ planned_id: entry.plannedId })
		.where('runner_id', '=', runnerId)
		.where('id', '=', entry.outingRunId)
		.execute();
}

/** False where it was kept before. */
async function keepEntry(
	step: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	entry: Entry,
	now: number
): Promise<boolean> {
	const { numInsertedOrUpdatedRows } = await step
		.insertInto('past_entry')
		.values({
			runner_id: runnerId,
			id: entry.id,
			outing_run_id: entry.outingRunId,
			sealed: vault.seal(placeOf(runnerId, entry.id), entry),
			received_at: now
		})
		.onConflict((conflict) => conflict.columns(['runner_id', 'id']).doNothing())
		.executeTakeFirst();
	return Boolean(numInsertedOrUpdatedRows);
}

async function follow(
	step: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	entry: Entry,
	{ now, timeZone }: Told
): Promise<void> {
	if (entry.kind === 'something-wrong' && isStopSign(entry.sign)) {
		const sign = { source: 'prompter', signs: [entry.sign], happenedAt: entry.at } as const;
		await events.record(step, vault, runnerId, { ...sign, timeZone }, now);
	} else if (entry.kind === 'something-wrong' && entry.sign === 'pain') {
		await pains.say(step, vault, runnerId, { level: 'new', where: null }, entry.at, now);
	} else if (entry.kind === 'pain' || entry.kind === 'pain-next-morning') {
		await pains.say(step, vault, runnerId, entry, entry.at, now);
	}
}

/** What a phone sends of an outing that was deleted meanwhile has had its effect, and goes too. */
async function dropRemoved(step: Kysely<Database>, runnerId: string): Promise<void> {
	const removed = step
		.selectFrom('past_outing')
		.select('id')
		.where('runner_id', '=', runnerId)
		.where('removed_at', 'is not', null);
	await step
		.deleteFrom('past_entry')
		.where('runner_id', '=', runnerId)
		.where('outing_run_id', 'in', removed)
		.execute();
}
