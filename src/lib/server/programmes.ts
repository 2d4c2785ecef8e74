import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { datesTaken, freeDays, replaceDays, type DatesTaken, type ToPlan } from './plan-days.ts';
import {
	programmeColumns,
	programmeOf,
	type Programme,
	type ProgrammeWords
} from './programme-rows.ts';

export type { ToPlan } from './plan-days.ts';
export type { Programme, ProgrammeInputs, ProgrammeWords } from './programme-rows.ts';

/** What a programme was made from, and the days that came of it. */
export interface Making {
	readonly words: ProgrammeWords;
	readonly planned: readonly ToPlan[];
}

export type Made =
	{ readonly kind: 'made'; readonly id: string } | DatesTaken | { readonly kind: 'not-found' };

export type Replanned =
	| { readonly kind: 'changed'; readonly revision: number }
	/** Somebody else changed it meanwhile. Nothing was written. */
	| { readonly kind: 'changed-meanwhile' }
	| DatesTaken
	| { readonly kind: 'not-found' };

type Leading = Pick<Coach, 'coachId' | 'name'>;

/** The programme that the group follows, or null. */
export async function current(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<Programme | null> {
	const row = await database
		.selectFrom('programme')
		.selectAll()
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.where('ended_at', 'is', null)
		.executeTakeFirst();
	return row ? programmeOf(row) : null;
}

/** Makes the group's programme; only owners do. One that it followed before ends. */
export async function make(
	database: Kysely<Database>,
	coach: Leading,
	groupId: string,
	{ words, planned }: Making,
	now: number
): Promise<Made> {
	return database.transaction().execute(async (step) => {
		if (!(await holdOwned(step, coach.coachId, groupId))) return { kind: 'not-found' };
		const taken = await datesTaken(step, groupId, planned);
		if (taken !== null) return taken;
		await endCurrent(step, groupId, now);
		const id = randomUUID();
		await step
			.insertInto('programme')
			.values({
				...columns(coach, words, 1, now),
				id,
				group_id: groupId,
				created_at: now
			})
			.execute();
		await replaceDays(step, groupId, id, planned);
		return { kind: 'made', id };
	});
}

/** Changes days, holidays or plan; only owners do. What was done or missed stays as it was. */
export async function change(
	database: Kysely<Database>,
	coach: Leading,
	groupId: string,
	{ words, planned, revision }: Making & { readonly revision: number },
	now: number
): Promise<Replanned> {
	return database.transaction().execute(async (step) => {
		const isOwner = await holdOwned(step, coach.coachId, groupId);
		const before = isOwner ? await current(step, coach.coachId, groupId) : null;
		if (before === null) return { kind: 'not-found' };
		if (before.revision !== revision) return { kind: 'changed-meanwhile' };
		const taken = await datesTaken(step, groupId, planned);
		if (taken !== null) return taken;
		await step
			.updateTable('programme')
			.set(columns(coach, words, revision + 1, now))
			.where('id', '=', before.id)
			.execute();
		await replaceDays(step, groupId, before.id, planned);
		return { kind: 'changed', revision: revision + 1 };
	});
}

/** The days to come are free again; what was done stays. Only owners end it. */
export async function end(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<'ended' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		if (!(await holdOwned(step, coachId, groupId))) return 'not-found';
		return (await endCurrent(step, groupId, now)) ? 'ended' : 'not-found';
	});
}

async function endCurrent(step: Kysely<Database>, groupId: string, now: number): Promise<boolean> {
	const { numUpdatedRows } = await step
		.updateTable('programme')
		.set({ ended_at: now })
		.where('group_id', '=', groupId)
		.where('ended_at', 'is', null)
		.executeTakeFirst();
	await freeDays(step, groupId);
	return numUpdatedRows > 0n;
}

/** Whether the group is the coach's own; whoever else changes it waits. */
async function holdOwned(step: Kysely<Database>, coachId: string, groupId: string) {
	await groups.hold(step, groupId);
	return (await groups.ofCoach(step, coachId, groupId))?.role === 'owner';
}

function columns(coach: Leading, words: ProgrammeWords, revision: number, now: number) {
	return {
		...programmeColumns(words),
		revision,
		changed_at: now,
		changed_by: coach.coachId,
		changed_by_name: coach.name
	};
}
