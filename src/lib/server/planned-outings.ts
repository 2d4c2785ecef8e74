import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Outing } from '../outing/outing.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import { violation } from './database/errors.ts';
import * as groups from './groups.ts';
import { outingShape } from './outing-shape.ts';
import { plannedOf, type PlannedOuting, type PlannedState } from './programme-rows.ts';
import { localDate } from './shapes.ts';

export { forRunner, waitingForNumber, type ComingOuting } from './coming-outings.ts';
export type { PlannedOuting, PlannedState } from './programme-rows.ts';

/** What is planned for a group, done and missed, by date; empty for who is not a coach of it. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	between: { readonly from: LocalDate; readonly until: LocalDate } | null = null
): Promise<PlannedOuting[]> {
	let rows = ofGroup(database, coachId, groupId).selectAll();
	if (between !== null) {
		rows = rows.where('on_date', '>=', between.from).where('on_date', '<=', between.until);
	}
	return (await rows.orderBy('on_date').execute()).map(plannedOf);
}

/** Null for what is not there or not the coach's. */
export async function find(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	plannedId: string
): Promise<PlannedOuting | null> {
	const row = await ofGroup(database, coachId, groupId)
		.where('id', '=', plannedId)
		.selectAll()
		.executeTakeFirst();
	return row ? plannedOf(row) : null;
}

export type Planned =
	{ readonly kind: 'planned'; readonly id: string } | { readonly kind: 'date-taken' | 'not-found' };

/** Plans an outing by itself for a day. A group has one outing a day. */
export async function plan(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	{ onDate, outing }: { readonly onDate: LocalDate; readonly outing: Outing }
): Promise<Planned> {
	if (!(await groups.ofCoach(database, coachId, groupId))) return { kind: 'not-found' };
	const row = {
		id: randomUUID(),
		group_id: groupId,
		on_date: localDate.parse(onDate),
		outing: JSON.stringify(outingShape.parse(outing)),
		state: 'planned' as const
	};
	try {
		await database.insertInto('planned_outing').values(row).execute();
		return { kind: 'planned', id: row.id };
	} catch (error) {
		if (violation(error) === 'unique') return { kind: 'date-taken' };
		throw error;
	}
}

/** Takes an outing by itself off its day again, while it is still to come. */
export async function unplan(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	plannedId: string
): Promise<'removed' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('planned_outing')
		.where('id', 'in', ofGroup(database, coachId, groupId).select('id'))
		.where('id', '=', plannedId)
		.where('programme_id', 'is', null)
		.where('state', '=', 'planned')
		.executeTakeFirst();
	return numDeletedRows ? 'removed' : 'not-found';
}

/** Says what became of a day. Whoever leads may. Moving what follows is the programme's matter. */
export async function mark(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	plannedId: string,
	state: PlannedState,
	now: number
): Promise<'marked' | 'not-found'> {
	const { numUpdatedRows } = await database
		.updateTable('planned_outing')
		.set({ state, decided_at: state === 'planned' ? null : now })
		.where('id', 'in', ofGroup(database, coachId, groupId).select('id'))
		.where('id', '=', plannedId)
		.executeTakeFirst();
	return numUpdatedRows ? 'marked' : 'not-found';
}

function ofGroup(database: Kysely<Database>, coachId: string, groupId: string) {
	return database
		.selectFrom('planned_outing')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId));
}
