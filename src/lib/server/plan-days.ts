import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Outing } from '../outing/outing.ts';
import type { CalendarDay } from '../outing/programme/days-to-come.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import { outingShape } from './outing-shape.ts';

/** One outing of a programme and its day. */
export interface ToPlan {
	readonly number: number;
	readonly week: number;
	readonly onDate: LocalDate;
	readonly outing: Outing;
}

/** Something stands on a day already that was done, missed, or planned by itself. */
export interface DatesTaken {
	readonly kind: 'dates-taken';
	readonly dates: readonly LocalDate[];
}

/* The callers have asked whose group it is, and hold it. */

/** What stands in a group's calendar, as one of its programmes sees it. */
export async function calendarOf(
	step: Kysely<Database>,
	groupId: string,
	programmeId: string | null
): Promise<CalendarDay[]> {
	const rows = await step
		.selectFrom('planned_outing')
		.select(['programme_id', 'number', 'on_date', 'state'])
		.where('group_id', '=', groupId)
		.orderBy('on_date')
		.execute();
	return rows
		.filter((row) => row.programme_id === programmeId || !isToCome(row))
		.map(({ programme_id, number, on_date, state }) => ({
			onDate: on_date,
			number: programme_id === programmeId ? number : null,
			state
		}));
}

/** What another programme had still to come makes room. */
function isToCome({ programme_id, state }: { programme_id: string | null; state: string }) {
	return programme_id !== null && state === 'planned';
}

/**
 * Which of the days are taken, or null. What a programme has still to come does not count: it makes
 * room.
 */
export async function datesTaken(
	step: Kysely<Database>,
	groupId: string,
	planned: readonly ToPlan[]
): Promise<DatesTaken | null> {
	if (planned.length === 0) return null;
	const rows = await step
		.selectFrom('planned_outing')
		.select('on_date')
		.where('group_id', '=', groupId)
		.where(({ or, eb }) => or([eb('programme_id', 'is', null), eb('state', '!=', 'planned')]))
		.where(
			'on_date',
			'in',
			planned.map(({ onDate }) => onDate)
		)
		.orderBy('on_date')
		.execute();
	return rows.length === 0 ? null : { kind: 'dates-taken', dates: rows.map((row) => row.on_date) };
}

/**
 * Puts these in the place of whatever the group's programmes have still to come. A day that stays as
 * it was keeps its id: phones know it by that. What passed without a word stays.
 */
export async function replaceDays(
	step: Kysely<Database>,
	groupId: string,
	programmeId: string,
	planned: readonly ToPlan[],
	today: LocalDate
): Promise<void> {
	const rows = planned.map(({ number, week, onDate, outing }) => ({
		programme_id: programmeId,
		number,
		week,
		on_date: onDate,
		outing: JSON.stringify(outingShape.parse(outing))
	}));
	const present = await toCome(step, groupId, today)
		.select(['id', 'programme_id', 'number', 'week', 'on_date', 'outing'])
		.execute();
	const wanted = new Set(rows.map(sameness));
	const kept = present.filter((row) => wanted.has(sameness(row)));
	const keptIds = new Set(kept.map(({ id }) => id));
	const gone = present.filter(({ id }) => !keptIds.has(id)).map(({ id }) => id);
	if (gone.length > 0) await step.deleteFrom('planned_outing').where('id', 'in', gone).execute();
	const stands = new Set(kept.map(sameness));
	const fresh = rows
		.filter((row) => !stands.has(sameness(row)))
		.map((row) => ({ ...row, id: randomUUID(), group_id: groupId, state: 'planned' as const }));
	if (fresh.length > 0) await step.insertInto('planned_outing').values(fresh).execute();
}

/** Takes away what the group's programmes have still to come, from today on. */
export async function freeDays(
	step: Kysely<Database>,
	groupId: string,
	today: LocalDate
): Promise<void> {
	await step
		.deleteFrom('planned_outing')
		.where('id', 'in', toCome(step, groupId, today).select('id'))
		.execute();
}

function toCome(step: Kysely<Database>, groupId: string, today: LocalDate) {
	return step
		.selectFrom('planned_outing')
		.where('group_id', '=', groupId)
		.where('programme_id', 'is not', null)
		.where('state', '=', 'planned')
		.where('on_date', '>=', today);
}

type Placed = Pick<
	Database['planned_outing'],
	'programme_id' | 'number' | 'week' | 'on_date' | 'outing'
>;

const sameness = ({ programme_id, number, week, on_date, outing }: Placed) =>
	JSON.stringify([programme_id, number, week, on_date, outing]);
