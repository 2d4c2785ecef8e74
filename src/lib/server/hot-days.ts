import type { Kysely } from 'kysely';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { localDate } from './shapes.ts';

/*
 * Days that a coach marked as hot. The mark is of the day and not of an outing: what is planned may
 * move, and whoever does another outing that day does it in the same heat.
 */

/** The marked days of a group from a date on, in order; empty for who is not a coach of it. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	from: LocalDate
): Promise<LocalDate[]> {
	const rows = await ofGroup(database, coachId, groupId)
		.select('on_date')
		.where('on_date', '>=', from)
		.orderBy('on_date')
		.execute();
	return rows.map(({ on_date }) => on_date);
}

/** Whoever leads may: who stands in has to be able to. Marked twice is marked. */
export async function mark(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	onDate: LocalDate,
	now: number
): Promise<'marked' | 'not-found'> {
	if (!(await groups.ofCoach(database, coachId, groupId))) return 'not-found';
	await database
		.insertInto('hot_day')
		.values({ group_id: groupId, on_date: localDate.parse(onDate), marked_at: now })
		.onConflict((conflict) => conflict.columns(['group_id', 'on_date']).doNothing())
		.execute();
	return 'marked';
}

export async function unmark(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	onDate: LocalDate
): Promise<'unmarked' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('hot_day')
		.where('group_id', 'in', ofGroup(database, coachId, groupId).select('group_id'))
		.where('on_date', '=', onDate)
		.executeTakeFirst();
	return numDeletedRows ? 'unmarked' : 'not-found';
}

/**
 * The days that a coach marked in any group of a runner, in order. Also of a group that they left
 * since: a day that was hot stays hot.
 */
export async function ofRunner(
	database: Kysely<Database>,
	runnerId: string,
	between: { readonly from: LocalDate; readonly until: LocalDate } | null = null
): Promise<LocalDate[]> {
	let rows = database
		.selectFrom('hot_day')
		.innerJoin('member', 'member.group_id', 'hot_day.group_id')
		.select('hot_day.on_date')
		.distinct()
		.where('member.runner_id', '=', runnerId);
	if (between !== null) {
		rows = rows.where('on_date', '>=', between.from).where('on_date', '<=', between.until);
	}
	return (await rows.orderBy('hot_day.on_date').execute()).map(({ on_date }) => on_date);
}

function ofGroup(database: Kysely<Database>, coachId: string, groupId: string) {
	return database
		.selectFrom('hot_day')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId));
}
