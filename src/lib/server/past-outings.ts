import type { Kysely } from 'kysely';
import { entryShape } from '../forms/entry.ts';
import type { Entry } from '../outing/entry.ts';
import { mergeEntries } from '../outing/merge-entries.ts';
import { settleEntries, type DoneOuting } from '../outing/settle-entries.ts';
import { isWalkingOuting } from '../outing/walked-outing.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as hotDays from './hot-days.ts';
import { readEach, type Missed, type Note } from './readable.ts';
import type { Place, Vault } from './vault.ts';
import * as walks from './walks.ts';

export { append } from './past-entries.ts';

/** An outing that was done, or is being done. */
export interface PastOuting extends DoneOuting {
	readonly id: string;
	readonly beganAt: number;
	/** The runner's own date when it began. */
	readonly onDate: LocalDate;
}

/** What is held of an outing beside its entries. */
export type OutingDay = Awaited<ReturnType<typeof days>>[number];

/** The runner's outings, newest first, with what each came to. */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<PastOuting[]> {
	return done(await days(database, runnerId), await entriesOf(database, vault, runnerId));
}

/** Only so many of them, of which no others are read. */
export async function newest(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	atMost: number,
	note?: Note
): Promise<PastOuting[]> {
	const standing = (await days(database, runnerId)).filter(({ removedAt }) => removedAt === null);
	const some = standing.slice(-atMost);
	if (some.length === 0) return [];
	const ids = some.map(({ id }) => id);
	return done(some, await entriesOf(database, vault, runnerId, ids, note));
}

/**
 * What each outing came to, newest first, where all of it was read already. On a day that a coach
 * marked as hot an outing was hot, whatever a phone without a network knew of it.
 */
export function done(all: readonly OutingDay[], kept: readonly Entry[]): PastOuting[] {
	const standing = all.filter(({ removedAt }) => removedAt === null);
	const byRun = Map.groupBy(kept, ({ outingRunId }) => outingRunId);
	return standing.toReversed().flatMap(({ id, beganAt, onDate, isHotDay }) => {
		const entries = byRun.get(id);
		if (entries === undefined) return [];
		const settled = settleEntries(entries);
		const { started } = settled;
		const hot = started && { ...started, hot: started.hot || isHotDay };
		return [{ ...settled, started: hot, id, beganAt, onDate }];
	});
}

/** One of them, or null for what is not there or not the runner's. */
export async function of(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	id: string
): Promise<PastOuting | null> {
	const all = await days(database, runnerId);
	const [found] = done(
		all.filter((one) => one.id === id),
		await entriesOf(database, vault, runnerId, id)
	);
	return found ?? null;
}

/**
 * Every entry as it was sent, for the runner's own file, or those of some outings.
 * @param only ids of the outings; null for all
 */
export async function entriesOf(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	only: string | readonly string[] | null = null,
	note?: Note
): Promise<readonly Entry[]> {
	let rows = database.selectFrom('past_entry').selectAll().where('runner_id', '=', runnerId);
	if (only !== null) rows = rows.where('outing_run_id', 'in', [only].flat());
	const kept = await rows.execute();
	const read = (row: (typeof kept)[number]) => entryOf(vault, runnerId, row);
	return mergeEntries(readEach(kept, read, (row) => row.received_at, note));
}

/** What is held of every outing beside its entries, also of one that was deleted; for their file. */
export async function days(database: Kysely<Database>, runnerId: string) {
	const rows = await database
		.selectFrom('past_outing')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.orderBy('began_at')
		.orderBy('id')
		.execute();
	const hot = new Set(await hotDays.ofRunner(database, runnerId));
	return rows.map((row) => ({
		id: row.id,
		beganAt: row.began_at,
		onDate: row.on_date,
		plannedId: row.planned_id,
		/** A coach of theirs marked the day as hot. */
		isHotDay: hot.has(row.on_date),
		removedAt: row.removed_at
	}));
}

/**
 * Deletes what was written down of an outing, and the walk that it counted as. An urgent sign and a
 * pain of it stand. Another walked outing of that day counts in its place.
 * @throws VaultClosed; then nothing is deleted
 */
export async function remove(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	id: string,
	now: number
): Promise<'removed' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const row = await outingsOf(step, runnerId).where('id', '=', id).executeTakeFirst();
		if (!row) return 'not-found';
		await step
			.updateTable('past_outing')
			.set({ removed_at: now })
			.where('runner_id', '=', runnerId)
			.where('id', '=', id)
			.execute();
		await step
			.deleteFrom('past_entry')
			.where('runner_id', '=', runnerId)
			.where('outing_run_id', '=', id)
			.execute();
		await walks.removeOfOuting(step, runnerId, id);
		const sameDay = await outingsOf(step, runnerId).where('on_date', '=', row.on_date).execute();
		for (const other of sameDay) await countWalk(step, vault, runnerId, other.id, now);
		return 'removed';
	});
}

/**
 * Counts an outing that was only walked as the walk of its day. One of which a line cannot be read
 * may have had a run in it, and does not count.
 */
export async function countWalk(
	step: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	id: string,
	now: number
): Promise<void> {
	const row = await outingsOf(step, runnerId).where('id', '=', id).executeTakeFirst();
	const missed: Missed[] = [];
	const note: Note = (line) => missed.push(line);
	const entries = row ? await entriesOf(step, vault, runnerId, id, note) : [];
	if (!row || missed.length > 0 || entries.length === 0) return;
	if (!isWalkingOuting(settleEntries(entries))) return;
	await walks.record(step, runnerId, row.on_date, now, id);
}

export function outingsOf(database: Kysely<Database>, runnerId: string) {
	return database
		.selectFrom('past_outing')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.where('removed_at', 'is', null);
}

/** @throws VaultClosed, Unreadable */
export const entryOf = (
	vault: Vault,
	runnerId: string,
	{ id, sealed }: { readonly id: string; readonly sealed: string }
): Entry => vault.unseal(placeOf(runnerId, id), sealed, entryShape);

export function placeOf(runnerId: string, id: string): Place {
	return { table: 'past_entry', owner: runnerId, row: id };
}
