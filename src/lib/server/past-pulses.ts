import type { Kysely } from 'kysely';
import type { Entry } from '../outing/entry.ts';
import type { Database } from './database/tables.ts';
import { entryOf, placeOf } from './past-outings.ts';
import { EMPTIED, readApart } from './readable.ts';
import { standing } from './standing.ts';
import type { Vault } from './vault.ts';

/**
 * What may be kept of entries: all, or all but the pulses, where pulse numbers are not on for the
 * runner at this moment. A phone may send later what it measured before a result changed.
 */
export async function withoutPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	entries: readonly Entry[],
	now: number
): Promise<readonly Entry[]> {
	if (!entries.some(hasPulse)) return entries;
	const access = await standing(database, vault, runnerId, now);
	return access.allowed && access.pulse.on ? entries : entries.flatMap(bare);
}

/**
 * Takes every pulse out of a runner's past outings; talk, effort and what was done stay, but for what
 * cannot be read.
 * @returns whether there were any
 * @throws VaultClosed
 */
export async function forgetPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<boolean> {
	const rows = await database
		.selectFrom('past_entry')
		.select(['id', 'sealed'])
		.where('runner_id', '=', runnerId)
		.execute();
	const { kept, spoilt } = readApart(rows, (row) => entryOf(vault, runnerId, row));
	const withPulse = kept.filter(hasPulse);
	for (const { id } of spoilt) await put(database, runnerId, id, EMPTIED);
	for (const entry of withPulse) await write(database, vault, runnerId, entry.id, bare(entry)[0]);
	return withPulse.length + spoilt.length > 0;
}

/** A guessed pulse is one that somebody has in mind for themselves: it goes with the measured ones. */
const hasPulse = (entry: Entry): boolean =>
	entry.kind === 'pulse-summary' ||
	(entry.kind === 'talk-answer' && (entry.pulse !== null || typeof entry.guessedBpm === 'number'));

function bare(entry: Entry): readonly Entry[] {
	if (entry.kind === 'pulse-summary') return [];
	if (entry.kind !== 'talk-answer') return [entry];
	const guessed = entry.guessedBpm === undefined ? {} : { guessedBpm: null };
	return [{ ...entry, pulse: null, ...guessed }];
}

async function write(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	id: string,
	left: Entry | undefined
): Promise<void> {
	if (left === undefined) {
		const entry = database.deleteFrom('past_entry').where('runner_id', '=', runnerId);
		await entry.where('id', '=', id).execute();
		return;
	}
	await put(database, runnerId, id, vault.seal(placeOf(runnerId, id), left));
}

async function put(database: Kysely<Database>, runnerId: string, id: string, sealed: string) {
	const entry = database.updateTable('past_entry').set({ sealed });
	await entry.where('runner_id', '=', runnerId).where('id', '=', id).execute();
}
