import type { Kysely } from 'kysely';
import { z } from 'zod';
import { painLevels, painPlaces, type PainLevel, type PainPlace } from '../outing/entry.ts';
import { byRunner, type Of } from './by-runner.ts';
import type { Database } from './database/tables.ts';
import type { Vault } from './vault.ts';

interface Pain {
	readonly level: PainLevel;
	readonly where: PainPlace | null;
}

export interface StandingPain extends Pain {
	readonly saidAt: number;
	readonly goneAt: number | null;
}

const shape: z.ZodType<Pain> = z.strictObject({
	level: z.enum(painLevels),
	where: z.enum(painPlaces).nullable()
});

/**
 * Keeps new or growing pain: no running until the runner says that it is gone. "No new or growing
 * pain" after a later outing lifts nothing, for the old one may still be there. Of two the later
 * counts, whichever came first.
 */
export async function say(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	{ level, where }: Pain,
	at: number,
	now: number
): Promise<void> {
	if (level === 'none') return;
	const said_at = Math.min(at, now);
	const sealed = vault.seal(placeOf(runnerId), { level, where });
	await database
		.insertInto('runner_pain')
		.values({ runner_id: runnerId, said_at, gone_at: null, sealed })
		.onConflict((conflict) =>
			conflict
				.column('runner_id')
				.doUpdateSet({ said_at, sealed })
				.where('runner_pain.said_at', '<', said_at)
		)
		.execute();
}

/** The runner says that it is gone. */
export async function gone(
	database: Kysely<Database>,
	runnerId: string,
	now: number
): Promise<void> {
	await database
		.updateTable('runner_pain')
		.set({ gone_at: now })
		.where('runner_id', '=', runnerId)
		.execute();
}

/** Whether pain stands now. */
export async function stands(database: Kysely<Database>, runnerId: string): Promise<boolean> {
	return (await standsForMany(database, [runnerId]))(runnerId);
}

/** Whether pain stands now, for many runners. Where and how it hurts is not read. */
export async function standsForMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<boolean>> {
	if (runnerIds.length === 0) return () => false;
	const rows = await database
		.selectFrom('runner_pain')
		.select(['runner_id', 'said_at', 'gone_at'])
		.where('runner_id', 'in', runnerIds)
		.execute();
	const of = byRunner(rows);
	return (runnerId) =>
		of(runnerId).some(({ said_at, gone_at }) => gone_at === null || said_at > gone_at);
}

/** The last that was told, gone or not; null for none. */
export async function last(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<StandingPain | null> {
	const row = await database
		.selectFrom('runner_pain')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	if (!row) return null;
	const said = vault.unseal(placeOf(runnerId), row.sealed, shape);
	return { ...said, saidAt: row.said_at, goneAt: row.gone_at };
}

const placeOf = (runnerId: string) => ({ table: 'runner_pain', owner: runnerId, row: runnerId });
