import type { Kysely, Selectable } from 'kysely';
import type { Outing } from '../outing/outing.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { byName } from './by-name.ts';
import { outingOf } from './outing-shape.ts';
import { readEach, type Note } from './readable.ts';

/** Whoever asks: a coach for the outings of a group, or a runner for their own. */
export type Holder =
	| { readonly coach: Pick<Coach, 'coachId' | 'name'>; readonly groupId: string }
	| { readonly runnerId: string };

/** An outing that was written down. */
export interface OutingPlan {
	readonly id: string;
	readonly outing: Outing;
	/** Counts up from 1 with each save. */
	readonly revision: number;
	/** Epoch milliseconds. */
	readonly changedAt: number;
	/** Null for a runner's own. */
	readonly changedByName: string | null;
}

/** What was kept at some time, the newest included. */
export type PlanVersion = Omit<OutingPlan, 'id'>;

/** The plans that are this holder's, the removed ones too. */
export function held(database: Kysely<Database>, holder: Holder) {
	const plans = database.selectFrom('outing_plan');
	if ('runnerId' in holder) return plans.where('outing_plan.runner_id', '=', holder.runnerId);
	return plans
		.where('outing_plan.group_id', '=', holder.groupId)
		.where('outing_plan.group_id', 'in', groups.idsOf(database, holder.coach.coachId));
}

/** Whether there is a place for a plan of this holder at all. */
export async function mayHold(step: Kysely<Database>, holder: Holder): Promise<boolean> {
	if ('runnerId' in holder) return true;
	const { coach, groupId } = holder;
	await groups.hold(step, groupId);
	return (await groups.ofCoach(step, coach.coachId, groupId)) !== null;
}

/** Who a row says was the last to change it. */
export function changedBy(holder: Holder) {
	return 'runnerId' in holder
		? { changed_by: holder.runnerId, changed_by_name: null }
		: { changed_by: holder.coach.coachId, changed_by_name: holder.coach.name };
}

/**
 * Every plan of these rows, by name.
 * @throws Unreadable, where nobody takes a note
 */
export function plansOf(
	rows: readonly Selectable<Database['outing_plan']>[],
	note?: Note
): OutingPlan[] {
	const plans = readEach(rows, planOf, (row) => row.changed_at, note);
	const named = plans.map((plan) => ({ plan, name: plan.outing.name }));
	return byName(named).map(({ plan }) => plan);
}

/** @throws Unreadable */
export function planOf(row: Selectable<Database['outing_plan']>): OutingPlan {
	return { id: row.id, ...versionOf(row) };
}

type VersionRow = Pick<
	Selectable<Database['outing_plan_version']>,
	'outing' | 'revision' | 'changed_at' | 'changed_by_name'
>;

/** @throws Unreadable */
export function versionOf(row: VersionRow): PlanVersion {
	return {
		outing: outingOf(row.outing, 'outing_plan'),
		revision: row.revision,
		changedAt: row.changed_at,
		changedByName: row.changed_by_name
	};
}
