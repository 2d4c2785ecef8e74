import type { Kysely } from 'kysely';
import type { LocalDate } from '../screening/types.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as shapes from './shapes.ts';

/**
 * Keeps that the runner walked an outing on a day. Twice on a day is one walk.
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
		.insertInto('walk')
		.values({ runner_id: runnerId, on_date: shapes.localDate.parse(onDate), recorded_at: now })
		.onConflict((conflict) => conflict.columns(['runner_id', 'on_date']).doNothing())
		.execute();
}

export async function remove(
	database: Kysely<Database>,
	runnerId: string,
	onDate: LocalDate
): Promise<void> {
	await database
		.deleteFrom('walk')
		.where('runner_id', '=', runnerId)
		.where('on_date', '=', onDate)
		.execute();
}

/** The days, newest first. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<LocalDate[]> {
	const rows = await database
		.selectFrom('walk')
		.select('on_date')
		.where('runner_id', '=', runnerId)
		.orderBy('on_date', 'desc')
		.execute();
	return rows.map((row) => row.on_date);
}
