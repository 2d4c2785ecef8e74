import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { localDate } from '../calendar/local-date.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { calendarOf, datesTaken, freeDays, replaceDays, type DatesTaken } from './plan-days.ts';
import { plannedBy, type Making } from './programme-making.ts';
import { inputsPlace, programmeColumns, programmeOf, type Programme } from './programme-rows.ts';
import type { Vault } from './vault.ts';

export type { ToPlan } from './plan-days.ts';
export type { Making, Planner } from './programme-making.ts';
export type { Programme, ProgrammeInputs, ProgrammeWords } from './programme-rows.ts';

/** The programme that somebody saw, or null for none. */
export type Seen = Pick<Programme, 'id' | 'revision'> | null;

export type Made =
	| { readonly kind: 'made'; readonly id: string }
	/** Somebody else made or changed one meanwhile. Nothing was written. */
	| { readonly kind: 'changed-meanwhile' }
	| DatesTaken
	| { readonly kind: 'not-found' };

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
	vault: Vault,
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
	return row ? programmeOf(row, vault) : null;
}

/**
 * Makes the group's programme; only owners do. One that it followed before ends: what it had still to
 * come goes, and what was done, missed or passed without a word stays.
 *
 * @param making.instead of what it is made; left out, of whatever there is
 */
export async function make(
	database: Kysely<Database>,
	vault: Vault,
	coach: Leading,
	groupId: string,
	{ words, planned: how, instead }: Making & { readonly instead?: Seen },
	now: number
): Promise<Made> {
	return database.transaction().execute(async (step) => {
		const group = await holdOwned(step, coach.coachId, groupId);
		if (group === null) return { kind: 'not-found' };
		const before = await current(step, vault, coach.coachId, groupId);
		if (instead !== undefined && !isSame(before, instead)) return { kind: 'changed-meanwhile' };
		const today = localDate(now, group.timeZone);
		const planned = plannedBy(how, words, await calendarOf(step, groupId, null), today);
		const taken = await datesTaken(step, groupId, planned);
		if (taken !== null) return taken;
		await endCurrent(step, groupId, now, today);
		const id = randomUUID();
		await step
			.insertInto('programme')
			.values({
				...columns(coach, 1, now),
				...programmeColumns(words, inputsPlace(groupId, id), vault),
				id,
				group_id: groupId,
				created_at: now
			})
			.execute();
		await replaceDays(step, groupId, id, planned, today);
		return { kind: 'made', id };
	});
}

/** Changes days, holidays or plan; only owners do. What was done or missed stays as it was. */
export async function change(
	database: Kysely<Database>,
	vault: Vault,
	coach: Leading,
	groupId: string,
	{ words, planned: how, revision }: Making & { readonly revision: number },
	now: number
): Promise<Replanned> {
	return database.transaction().execute(async (step) => {
		const group = await holdOwned(step, coach.coachId, groupId);
		const before = group ? await current(step, vault, coach.coachId, groupId) : null;
		if (group === null || before === null) return { kind: 'not-found' };
		if (before.revision !== revision) return { kind: 'changed-meanwhile' };
		const today = localDate(now, group.timeZone);
		const planned = plannedBy(how, words, await calendarOf(step, groupId, before.id), today);
		const taken = await datesTaken(step, groupId, planned);
		if (taken !== null) return taken;
		await step
			.updateTable('programme')
			.set({
				...columns(coach, revision + 1, now),
				...programmeColumns(words, inputsPlace(groupId, before.id), vault)
			})
			.where('id', '=', before.id)
			.execute();
		await replaceDays(step, groupId, before.id, planned, today);
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
		const group = await holdOwned(step, coachId, groupId);
		if (group === null) return 'not-found';
		const today = localDate(now, group.timeZone);
		return (await endCurrent(step, groupId, now, today)) ? 'ended' : 'not-found';
	});
}

async function endCurrent(
	step: Kysely<Database>,
	groupId: string,
	now: number,
	today: LocalDate
): Promise<boolean> {
	const { numUpdatedRows } = await step
		.updateTable('programme')
		.set({ ended_at: now })
		.where('group_id', '=', groupId)
		.where('ended_at', 'is', null)
		.executeTakeFirst();
	await freeDays(step, groupId, today);
	return numUpdatedRows > 0n;
}

/** The group where it is the coach's own; whoever else changes it waits. */
async function holdOwned(step: Kysely<Database>, coachId: string, groupId: string) {
	await groups.hold(step, groupId);
	const group = await groups.ofCoach(step, coachId, groupId);
	return group?.role === 'owner' ? group : null;
}

const isSame = (before: Programme | null, seen: Seen) =>
	before?.id === seen?.id && before?.revision === seen?.revision;

function columns(coach: Leading, revision: number, now: number) {
	return {
		revision,
		changed_at: now,
		changed_by: coach.coachId,
		changed_by_name: coach.name
	};
}
