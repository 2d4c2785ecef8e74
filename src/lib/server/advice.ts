import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Advice } from '../screening/types.ts';
import * as audit from './audit.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import { readEach, type Note } from './readable.ts';
import * as shapes from './shapes.ts';
import type { Place, Vault } from './vault.ts';

/**
 * Keeps what a professional said, as the runner wrote it down. What it lifts is decided when it is
 * read, not here.
 * @throws ConsentMissing, VaultClosed
 */
export async function record(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	words: shapes.AdviceWords,
	now: number
): Promise<Advice> {
	await consents.need(database, runnerId);
	const id = randomUUID();
	const kept = shapes.advice.parse(words);
	await database
		.insertInto('advice')
		.values({
			id,
			runner_id: runnerId,
			sealed: vault.seal(placeOf(runnerId, id), kept),
			recorded_at: now
		})
		.execute();
	await audit.record(database, runnerId, now, 'advice.recorded', { adviceId: id });
	return { ...kept, id, recordedAt: now };
}

export async function remove(
	database: Kysely<Database>,
	runnerId: string,
	adviceId: string,
	now: number
): Promise<'removed' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('advice')
		.where('id', '=', adviceId)
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	if (!numDeletedRows) return 'not-found';
	await audit.record(database, runnerId, now, 'advice.removed', { adviceId });
	return 'removed';
}

/**
 * Newest first.
 * @throws VaultClosed, Unreadable
 */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	note?: Note
): Promise<Advice[]> {
	return (await listOfMany(database, vault, [runnerId], note))(runnerId);
}

/** The same for many runners: asked for one that cannot be read, it throws for that one alone. */
export async function listOfMany(
	database: Kysely<Database>,
	vault: Vault,
	runnerIds: readonly string[],
	note?: Note
): Promise<Of<Advice[]>> {
	const rows = await database
		.selectFrom('advice')
		.selectAll()
		.where('runner_id', 'in', runnerIds)
		.orderBy('recorded_at', 'desc')
		.orderBy('id')
		.execute();
	const of = byRunner(rows);
	const read = (row: (typeof rows)[number]): Advice => ({
		...vault.unseal(placeOf(row.runner_id, row.id), row.sealed, shapes.advice),
		id: row.id,
		recordedAt: row.recorded_at
	});
	return (runnerId) => readEach(of(runnerId), read, (row) => row.recorded_at, note);
}

function placeOf(runnerId: string, id: string): Place {
	return { table: 'advice', owner: runnerId, row: id };
}
