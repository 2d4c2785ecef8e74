import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Outing } from '../outing/outing.ts';
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

/** Puts these in the place of whatever the group's programmes have still to come. */
export async function replaceDays(
	step: Kysely<Database>,
	groupId: string,
	programmeId: string,
	planned: readonly ToPlan[]
): Promise<void> {
	await freeDays(step, groupId);
	if (planned.length === 0) return;
	const rows = planned.map(({ number, week, onDate, outing }) => ({
		id: randomUUID(),
		group_id: groupId,
		programme_id: programmeId,
		number,
		week,
		on_date: onDate,
		outing: JSON.stringify(outingShape.parse(outing)),
		state: 'planned' as const
	}));
	await step.insertInto('planned_outing').values(rows).execute();
}

/** Takes away what the group's programmes have still to come. */
export async function freeDays(step: Kysely<Database>, groupId: string): Promise<void> {
	await step
		.deleteFrom('planned_outing')
		.where('group_id', '=', groupId)
		.where('programme_id', 'is not', null)
		.where('state', '=', 'planned')
		.execute();
}
