import { randomUUID } from 'node:crypto';
import type { Kysely, Selectable } from 'kysely';
import { z } from 'zod';
import { phaseKinds } from '../outing/phase.ts';
import { talkLevels } from '../physiology/effort-scale.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import { EMPTIED, readApart, readEach, type Note } from './readable.ts';
import * as shapes from './shapes.ts';
import type { Place, Vault } from './vault.ts';

const bpm = z.number().min(20).max(250);

const seen = z.strictObject({
	talk: z.enum(talkLevels),
	pulseBpm: bpm.nullable(),
	/** Seconds that were counted by hand, or what a strap or watch showed. */
	method: z.union([z.literal(15), z.literal(10), z.literal('device')]).nullable()
});
const words = z.strictObject({
	on: shapes.localDate,
	phase: z.enum(phaseKinds),
	effort: z.union(([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const).map((step) => z.literal(step))),
	pulseBpm: bpm.nullable(),
	/** Null until they looked. */
	seen: seen.nullable()
});

export type Seen = z.infer<typeof seen>;
export type GuessWords = z.infer<typeof words>;
export type Guess = GuessWords & { readonly id: string; readonly guessedAt: number };

/** Who has not looked by then was interrupted. Our own choice, no source. */
const OPEN_MS = 30 * 60_000;
/** Older guesses say little about today. Our own choice, no source. */
const KEPT = 60;

/**
 * Keeps a guess, still without what is then seen. One that was left open goes.
 * @throws ConsentMissing, VaultClosed
 */
export async function make(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	guess: Omit<GuessWords, 'seen'>,
	now: number
): Promise<void> {
	const id = randomUUID();
	const sealed = vault.seal(placeOf(runnerId, id), words.parse({ ...guess, seen: null }));
	await database.transaction().execute(async (step) => {
		await consents.need(step, runnerId);
		await discardOpen(step, runnerId);
		await step
			.insertInto('guess')
			.values({ id, runner_id: runnerId, guessed_at: now, looked_at: null, sealed })
			.execute();
		const rows = await ofRunner(step, runnerId).select('id').execute();
		const old = rows.slice(KEPT).map((row) => row.id);
		if (old.length > 0) await step.deleteFrom('guess').where('id', 'in', old).execute();
	});
}

/**
 * Adds what was seen to the guess that is open.
 * @throws VaultClosed, Unreadable
 */
export async function look(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	what: Seen,
	now: number
): Promise<'kept' | 'none-open'> {
	const guess = await open(database, vault, runnerId, now);
	if (guess === null) return 'none-open';
	const { id, guessedAt: _, ...said } = guess;
	const sealed = vault.seal(placeOf(runnerId, id), words.parse({ ...said, seen: what }));
	const { numUpdatedRows } = await database
		.updateTable('guess')
		.set({ looked_at: now, sealed })
		.where('id', '=', id)
		.where('looked_at', 'is', null)
		.executeTakeFirst();
	return numUpdatedRows ? 'kept' : 'none-open';
}

/**
 * The guess that was made and not yet looked at.
 * @throws VaultClosed, Unreadable
 */
export async function open(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
): Promise<Guess | null> {
	const row = await ofRunner(database, runnerId)
		.selectAll()
		.where('looked_at', 'is', null)
		.where('guessed_at', '>', now - OPEN_MS)
		.executeTakeFirst();
	return row ? read(vault, row) : null;
}

/**
 * Every guess, newest first, looked at or not.
 * @throws VaultClosed, Unreadable
 */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	note?: Note
): Promise<Guess[]> {
	const rows = await ofRunner(database, runnerId).selectAll().execute();
	return readEach(
		rows,
		(row) => read(vault, row),
		(row) => row.guessed_at,
		note
	);
}

export async function discardOpen(database: Kysely<Database>, runnerId: string): Promise<void> {
	await database
		.deleteFrom('guess')
		.where('runner_id', '=', runnerId)
		.where('looked_at', 'is', null)
		.execute();
}

export async function remove(
	database: Kysely<Database>,
	runnerId: string,
	id: string
): Promise<'removed' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('guess')
		.where('runner_id', '=', runnerId)
		.where('id', '=', id)
		.executeTakeFirst();
	return numDeletedRows ? 'removed' : 'not-found';
}

export async function removeAll(database: Kysely<Database>, runnerId: string): Promise<void> {
	await database.deleteFrom('guess').where('runner_id', '=', runnerId).execute();
}

/**
 * Takes every pulse out of the guesses; efforts and talk stay, but for those that cannot be read.
 * @returns whether there were any
 * @throws VaultClosed
 */
export async function forgetPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<boolean> {
	const rows = await ofRunner(database, runnerId).selectAll().execute();
	const { kept, spoilt } = readApart(rows, (row) => read(vault, row));
	for (const { id } of spoilt) await write(database, runnerId, id, EMPTIED);
	const withPulse = kept.filter(({ pulseBpm, seen: what }) => pulseBpm ?? what?.pulseBpm);
	for (const { id, guessedAt: _, ...said } of withPulse) {
		const what = said.seen && { ...said.seen, pulseBpm: null, method: null };
		const sealed = vault.seal(placeOf(runnerId, id), { ...said, pulseBpm: null, seen: what });
		await write(database, runnerId, id, sealed);
	}
	return withPulse.length + spoilt.length > 0;
}

async function write(database: Kysely<Database>, runnerId: string, id: string, sealed: string) {
	const guess = database.updateTable('guess').set({ sealed });
	await guess.where('runner_id', '=', runnerId).where('id', '=', id).execute();
}

const ofRunner = (database: Kysely<Database>, runnerId: string) =>
	database
		.selectFrom('guess')
		.where('runner_id', '=', runnerId)
		.orderBy('guessed_at', 'desc')
		.orderBy('id');

function read(vault: Vault, row: Selectable<Database['guess']>): Guess {
	const said = vault.unseal(placeOf(row.runner_id, row.id), row.sealed, words);
	return { ...said, id: row.id, guessedAt: row.guessed_at };
}

function placeOf(runnerId: string, id: string): Place {
	return { table: 'guess', owner: runnerId, row: id };
}
