import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Outing } from '../outing/outing.ts';
import type { Database } from './database/tables.ts';
import {
	changedBy,
	held,
	mayHold,
	planOf,
	plansOf,
	versionOf,
	type Holder,
	type OutingPlan,
	type PlanVersion
} from './outing-plan-rows.ts';
import { outingShape } from './outing-shape.ts';
import type { Note } from './readable.ts';

export type { Holder, OutingPlan, PlanVersion } from './outing-plan-rows.ts';

/** A library that nobody can look over is none. Our own choice. */
export const MOST_PLANS = 200;
const KEPT_VERSIONS = 50;
const REMOVED_MS = 30 * 24 * 60 * 60 * 1000;

export type Saved =
	| { readonly kind: 'saved'; readonly revision: number }
	/** Somebody else saved meanwhile: this is what they made of it. Nothing was written. */
	| { readonly kind: 'changed-meanwhile'; readonly theirs: OutingPlan }
	| { readonly kind: 'not-found' };

/** Every outing of the holder's, by name. */
export async function list(
	database: Kysely<Database>,
	holder: Holder,
	note?: Note
): Promise<OutingPlan[]> {
	const rows = held(database, holder).where('removed_at', 'is', null).selectAll('outing_plan');
	return plansOf(await rows.execute(), note);
}

/** Null for what does not exist, was removed, or is somebody else's: the three are the same. */
export async function find(
	database: Kysely<Database>,
	holder: Holder,
	planId: string
): Promise<OutingPlan | null> {
	const row = await held(database, holder)
		.where('outing_plan.id', '=', planId)
		.where('removed_at', 'is', null)
		.selectAll('outing_plan')
		.executeTakeFirst();
	return row ? planOf(row) : null;
}

export type Created =
	{ readonly kind: 'created'; readonly id: string } | { readonly kind: 'not-found' | 'full' };

/**
 * Owners and helpers alike: whoever leads an outing has to be able to change it.
 * @throws ZodError for what is no outing
 */
export async function create(
	database: Kysely<Database>,
	holder: Holder,
	outing: Outing,
	now: number
): Promise<Created> {
	return database.transaction().execute(async (step) => {
		if (!(await mayHold(step, holder))) return { kind: 'not-found' };
		if ((await list(step, holder)).length >= MOST_PLANS) return { kind: 'full' };
		const id = randomUUID();
		const state = { outing: written(outing), revision: 1, changed_at: now };
		await step
			.insertInto('outing_plan')
			.values({
				...state,
				...changedBy(holder),
				id,
				group_id: 'runnerId' in holder ? null : holder.groupId,
				runner_id: 'runnerId' in holder ? holder.runnerId : null,
				created_at: now
			})
			.execute();
		await keepVersion(step, id, { ...state, ...changedBy(holder) });
		return { kind: 'created', id };
	});
}

/**
 * Keeps a changed outing, unless somebody else has saved since the revision that was edited.
 * @throws ZodError for what is no outing
 */
export async function save(
	database: Kysely<Database>,
	holder: Holder,
	planId: string,
	{ outing, revision }: { readonly outing: Outing; readonly revision: number },
	now: number
): Promise<Saved> {
	return database.transaction().execute(async (step) => {
		const state = { outing: written(outing), revision: revision + 1, changed_at: now };
		const { numUpdatedRows } = await step
			.updateTable('outing_plan')
			.set({ ...state, ...changedBy(holder) })
			.where('id', 'in', held(step, holder).select('outing_plan.id'))
			.where('id', '=', planId)
			.where('removed_at', 'is', null)
			.where('revision', '=', revision)
			.executeTakeFirst();
		if (!numUpdatedRows) {
			const theirs = await find(step, holder, planId);
			return theirs === null ? { kind: 'not-found' } : { kind: 'changed-meanwhile', theirs };
		}
		await keepVersion(step, planId, { ...state, ...changedBy(holder) });
		return { kind: 'saved', revision: state.revision };
	});
}

/** Takes it out of the library. It can be put back for a month. */
export async function remove(
	database: Kysely<Database>,
	holder: Holder,
	planId: string,
	now: number
): Promise<'removed' | 'not-found'> {
	const done = await setRemoved(database, holder, planId, now);
	return done ? 'removed' : 'not-found';
}

export async function putBack(
	database: Kysely<Database>,
	holder: Holder,
	planId: string
): Promise<'put-back' | 'not-found'> {
	const done = await setRemoved(database, holder, planId, null);
	return done ? 'put-back' : 'not-found';
}

/** What was kept of it, newest first. Empty for what is not the holder's. */
export async function versions(
	database: Kysely<Database>,
	holder: Holder,
	planId: string
): Promise<PlanVersion[]> {
	const rows = await database
		.selectFrom('outing_plan_version')
		.selectAll()
		.where('plan_id', 'in', held(database, holder).select('outing_plan.id'))
		.where('plan_id', '=', planId)
		.orderBy('revision', 'desc')
		.limit(KEPT_VERSIONS)
		.execute();
	return rows.map(versionOf);
}

/** Deletes for good what was removed a month ago. */
export async function sweep(database: Kysely<Database>, now: number): Promise<void> {
	await database
		.deleteFrom('outing_plan')
		.where('removed_at', '<=', now - REMOVED_MS)
		.execute();
}

async function setRemoved(
	database: Kysely<Database>,
	holder: Holder,
	planId: string,
	at: number | null
): Promise<boolean> {
	const { numUpdatedRows } = await database
		.updateTable('outing_plan')
		.set({ removed_at: at })
		.where('id', 'in', held(database, holder).select('outing_plan.id'))
		.where('id', '=', planId)
		.where('removed_at', at === null ? 'is not' : 'is', null)
		.executeTakeFirst();
	return numUpdatedRows > 0n;
}

/** Adds a state, and lets go of the oldest ones. */
async function keepVersion(
	step: Kysely<Database>,
	planId: string,
	state: Omit<Database['outing_plan_version'], 'plan_id'> & { readonly changed_by: string | null }
): Promise<void> {
	const { changed_by: _, ...version } = state;
	await step
		.insertInto('outing_plan_version')
		.values({ ...version, plan_id: planId })
		.execute();
	await step
		.deleteFrom('outing_plan_version')
		.where('plan_id', '=', planId)
		.where('revision', '<=', state.revision - KEPT_VERSIONS)
		.execute();
}

const written = (outing: Outing) => JSON.stringify(outingShape.parse(outing));
