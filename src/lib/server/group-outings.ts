import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';

/** An outing that nobody ends ends by itself: contacts do not stay open overnight. */
export const LONGEST_MS = 4 * 60 * 60 * 1000;

/** A group outing that is on. */
export interface GroupOuting {
	readonly id: string;
	readonly onDate: LocalDate;
	readonly startedAt: number;
	/** When it ends by itself. */
	readonly endsAt: number;
}

export type Started =
	| { readonly kind: 'started' | 'already'; readonly outing: GroupOuting }
	| { readonly kind: 'no-emergency-number' | 'not-found' };

/** Starts the outing of today, once: the coach who comes second finds it on. */
export async function start(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<Started> {
	return database.transaction().execute(async (step) => {
		const group = await groups.ofCoach(step, coachId, groupId);
		if (!group || !(await groups.hold(step, groupId))) return { kind: 'not-found' };
		if (group.emergencyNumber === null) return { kind: 'no-emergency-number' };
		const present = await current(step, coachId, groupId, now);
		if (present) return { kind: 'already', outing: present };
		const row = { id: randomUUID(), on_date: localDate(now, group.timeZone), started_at: now };
		await step
			.insertInto('group_outing')
			.values({ ...row, group_id: groupId, started_by: coachId })
			.execute();
		return { kind: 'started', outing: outingOf(row) };
	});
}

/** Ends what is on. */
export async function end(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<'ended' | 'not-found'> {
	const { numUpdatedRows } = await database
		.updateTable('group_outing')
		.set({ ended_at: now })
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('ended_at', 'is', null)
		.where('started_at', '>', now - LONGEST_MS)
		.executeTakeFirst();
	return numUpdatedRows ? 'ended' : 'not-found';
}

/** The outing that is on now, or null: also for who is not a coach of the group. */
export async function current(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<GroupOuting | null> {
	const row = await database
		.selectFrom('group_outing')
		.select(['id', 'on_date', 'started_at'])
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('ended_at', 'is', null)
		.where('started_at', '>', now - LONGEST_MS)
		.orderBy('started_at', 'desc')
		.executeTakeFirst();
	return row ? outingOf(row) : null;
}

function outingOf(row: { id: string; on_date: LocalDate; started_at: number }): GroupOuting {
	return {
		id: row.id,
		onDate: row.on_date,
		startedAt: row.started_at,
		endsAt: row.started_at + LONGEST_MS
	};
}
