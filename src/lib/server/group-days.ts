import type { Kysely } from 'kysely';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';

/*
 * On which days somebody did an outing of the group, as their phone wrote it down. A day and nothing
 * else, and only of whoever lets the group's coaches see something: an outing on one's own is on no
 * page of a coach.
 */

/** The last such day of each member, in one query for the whole group. */
export async function lastByMember(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<ReadonlyMap<string, LocalDate>> {
	const rows = await doneWith(database, coachId, groupId)
		.select((of) => of.fn.max('past_outing.on_date').as('last_on'))
		.groupBy('member.id')
		.execute();
	return new Map(rows.map(({ id, last_on }) => [id, last_on]));
}

/** Whose phone wrote one down on a day. */
export async function membersOn(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	onDate: LocalDate
): Promise<ReadonlySet<string>> {
	const rows = await doneWith(database, coachId, groupId)
		.where('past_outing.on_date', '=', onDate)
		.execute();
	return new Set(rows.map(({ id }) => id));
}

/** A member's days, newest first. */
export async function ofMember(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<LocalDate[]> {
	const rows = await doneWith(database, coachId, groupId)
		.where('member.id', '=', memberId)
		.select('past_outing.on_date')
		.distinct()
		.orderBy('past_outing.on_date', 'desc')
		.execute();
	return rows.map((row) => row.on_date);
}

function doneWith(database: Kysely<Database>, coachId: string, groupId: string) {
	return database
		.selectFrom('member')
		.innerJoin('past_outing', 'past_outing.runner_id', 'member.runner_id')
		.innerJoin('planned_outing', 'planned_outing.id', 'past_outing.planned_id')
		.whereRef('planned_outing.group_id', '=', 'member.group_id')
		.where('member.group_id', '=', groupId)
		.where('member.group_id', 'in', groups.idsOf(database, coachId))
		.where('member.left_at', 'is', null)
		.where('member.shared_since', 'is not', null)
		.where('past_outing.removed_at', 'is', null)
		.select('member.id');
}
