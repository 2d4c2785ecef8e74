import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { compareDates, isLocalDate, localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';

/** The bare list: a name and a day. It stays when a runner leaves. */
export interface Attended {
	readonly name: string;
	readonly onDate: LocalDate;
	/** Null once the member is off the list. */
	readonly memberId: string | null;
}

export type Marked = 'marked' | 'in-the-future' | 'not-found';

/** Puts a member on the list of a day. Marking twice changes nothing. */
export async function mark(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	onDate: LocalDate,
	now: number
): Promise<Marked> {
	const group = await groups.ofCoach(database, coachId, groupId);
	const member = await members.find(database, coachId, groupId, memberId);
	if (!group || !member || !isLocalDate(onDate)) return 'not-found';
	if (compareDates(onDate, localDate(now, group.timeZone)) > 0) return 'in-the-future';
	await database
		.insertInto('attendance')
		.values({
			id: randomUUID(),
			group_id: groupId,
			member_id: memberId,
			name: member.name,
			on_date: onDate,
			marked_at: now,
			marked_by: coachId
		})
		.onConflict((conflict) => conflict.columns(['member_id', 'on_date']).doNothing())
		.execute();
	return 'marked';
}

export async function unmark(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	onDate: LocalDate
): Promise<void> {
	await database
		.deleteFrom('attendance')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('member_id', '=', memberId)
		.where('on_date', '=', onDate)
		.execute();
}

/** Who was there, newest day first; of one day alone where it is given. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	onDate?: LocalDate
): Promise<Attended[]> {
	let query = database
		.selectFrom('attendance')
		.select(['member_id', 'name', 'on_date'])
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.orderBy('on_date', 'desc')
		.orderBy('name');
	if (onDate !== undefined) query = query.where('on_date', '=', onDate);
	const rows = await query.execute();
	return rows.map((row) => ({ name: row.name, onDate: row.on_date, memberId: row.member_id }));
}

/** How often each member was there and when last, in one query for the whole group. */
export async function byMember(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<ReadonlyMap<string, { readonly times: number; readonly lastOn: LocalDate }>> {
	const rows = await database
		.selectFrom('attendance')
		.select(['member_id', (of) => of.fn.countAll<number>().as('times')])
		.select((of) => of.fn.max('on_date').as('last_on'))
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('member_id', 'is not', null)
		.groupBy('member_id')
		.execute();
	return new Map(
		rows.map((row) => [row.member_id ?? '', { times: Number(row.times), lastOn: row.last_on }])
	);
}

/** The runner's own days, in every group, also one that they left. Newest first. */
export async function ofRunner(database: Kysely<Database>, runnerId: string) {
	const rows = await database
		.selectFrom('attendance')
		.innerJoin('member', 'member.id', 'attendance.member_id')
		.innerJoin('running_group', 'running_group.id', 'attendance.group_id')
		.select(['attendance.on_date', 'attendance.name', 'running_group.name as group_name'])
		.where('member.runner_id', '=', runnerId)
		.orderBy('attendance.on_date', 'desc')
		.orderBy('group_name')
		.execute();
	return rows.map((row) => ({ onDate: row.on_date, name: row.name, groupName: row.group_name }));
}

/** The days on which a member was there, newest first. */
export async function ofMember(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<LocalDate[]> {
	const rows = await database
		.selectFrom('attendance')
		.select('on_date')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('member_id', '=', memberId)
		.orderBy('on_date', 'desc')
		.execute();
	return rows.map((row) => row.on_date);
}
