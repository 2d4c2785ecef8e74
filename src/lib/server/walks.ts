import type { Kysely } from 'kysely';
import { daysBetween } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as shapes from './shapes.ts';

/**
 * Keeps that the runner walked an outing on a day. Twice on a day is one walk. What the runner said
 * outlives an outing of that day which is deleted.
 * @param outingRunId the outing that it comes from; null where the runner says so
 * @throws ConsentMissing
 */
export async function record(
	database: Kysely<Database>,
	runnerId: string,
	onDate: LocalDate,
	now: number,
	outingRunId: string | null = null
): Promise<void> {
	await consents.need(database, runnerId);
	const on_date = shapes.localDate.parse(onDate);
	const walk = { runner_id: runnerId, on_date, recorded_at: now, outing_run_id: outingRunId };
	await database
		.insertInto('walk')
		.values(walk)
		.onConflict((conflict) => {
			const sameDay = conflict.columns(['runner_id', 'on_date']);
			return outingRunId === null
				? sameDay.doUpdateSet({ outing_run_id: null })
				: sameDay.doNothing();
		})
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

/** Takes away the walk that an outing counted as. */
export async function removeOfOuting(
	database: Kysely<Database>,
	runnerId: string,
	outingRunId: string
): Promise<void> {
	await database
		.deleteFrom('walk')
		.where('runner_id', '=', runnerId)
		.where('outing_run_id', '=', outingRunId)
		.execute();
}

/** The days, newest first. */
export async function list(
	database: Kysely<Database>,
	runnerId: string
): Promise<readonly LocalDate[]> {
	return (await listOfMany(database, [runnerId]))(runnerId);
}

/** The same for many runners. */
export async function listOfMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<readonly LocalDate[]>> {
	if (runnerIds.length === 0) return () => [];
	const rows = await database
		.selectFrom('walk')
		.select(['runner_id', 'on_date'])
		.where('runner_id', 'in', runnerIds)
		.orderBy('on_date', 'desc')
		.execute();
	const of = byRunner(rows);
	return (runnerId) => of(runnerId).map((row) => row.on_date);
}

/** Whole days from each walk to today. A walk that a clock set back put into the future is none. */
export function daysSince(walked: readonly LocalDate[], today: LocalDate): readonly number[] {
	return walked.map((on) => daysBetween(on, today)).filter((days) => days >= 0);
}
