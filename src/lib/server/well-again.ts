import type { Kysely } from 'kysely';
import type { LocalDate } from '../screening/types.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as shapes from './shapes.ts';

/**
 * Keeps the date on which a runner who was told to wait said that they are well again. Saying it
 * twice on a day changes nothing.
 * @throws ConsentMissing
 */
export async function record(
	database: Kysely<Database>,
	runnerId: string,
	onDate: LocalDate,
	now: number
): Promise<void> {
	await consents.need(database, runnerId);
	await database
		.insertInto('well_again')
		.values({ runner_id: runnerId, on_date: shapes.localDate.parse(onDate), recorded_at: now })
		.onConflict((conflict) => conflict.columns(['runner_id', 'on_date']).doNothing())
		.execute();
}

/** The last such date, or null. */
export async function latest(
	database: Kysely<Database>,
	runnerId: string
): Promise<LocalDate | null> {
	return (await latestOfMany(database, [runnerId]))(runnerId);
}

/** The same for many runners. */
export async function latestOfMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<LocalDate | null>> {
	const rows = await database
		.selectFrom('well_again')
		.select(['runner_id', (of) => of.fn.max('on_date').as('on_date')])
		.where('runner_id', 'in', runnerIds)
		.groupBy('runner_id')
		.execute();
	const of = byRunner(rows);
	return (runnerId) => of(runnerId)[0]?.on_date ?? null;
}

/** Newest first. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<LocalDate[]> {
	const rows = await database
		.selectFrom('well_again')
		.select('on_date')
		.where('runner_id', '=', runnerId)
		.orderBy('on_date', 'desc')
		.execute();
	return rows.map((row) => row.on_date);
}
