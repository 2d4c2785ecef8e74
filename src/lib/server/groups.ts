import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { HelpHere } from '../outing/kept.ts';
import * as audit from './audit.ts';
import { byName } from './by-name.ts';
import type { Database } from './database/tables.ts';
import { demoPersonOf } from './demo/demo.ts';
import { helpColumnsOf, helpOf } from './help-columns.ts';
import { deleteUnreachable } from './unreachable.ts';

/** A helper stands in: sees the runners and leads an outing. An owner also decides over the group. */
export type Role = 'owner' | 'helper';

export interface GroupFields extends HelpHere {
	readonly name: string;
	readonly usualPlace: string | null;
	/** IANA name. The group's days begin and end by it. */
	readonly timeZone: string;
	readonly units: 'km/h' | 'mph';
	readonly paceUnits: 'min/km' | 'min/mile';
}

/** A group as one of its coaches has it. */
export interface GroupOf extends GroupFields {
	readonly id: string;
	readonly role: Role;
	/** Made up, and marked as such on every page. */
	readonly isDemo: boolean;
}

/**
 * The ids of a coach's groups, as the inside of a query: whoever is not a coach of a group finds
 * nothing in it.
 */
export function idsOf(database: Kysely<Database>, coachId: string) {
	return database.selectFrom('group_coach').select('group_id').where('coach_id', '=', coachId);
}

/** The same of the groups that are the coach's own. */
export function idsOwnedBy(database: Kysely<Database>, coachId: string) {
	return idsOf(database, coachId).where('role', '=', 'owner');
}

/** By name. */
export async function list(database: Kysely<Database>, coachId: string): Promise<GroupOf[]> {
	const rows = await rowsOf(database, coachId).execute();
	return byName(rows.map(groupOf));
}

/** Null for a group that does not exist, or that is not the coach's: the two are the same. */
export async function ofCoach(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<GroupOf | null> {
	const row = await rowsOf(database, coachId)
		.where('running_group.id', '=', groupId)
		.executeTakeFirst();
	return row ? groupOf(row) : null;
}

/** Makes a group whose owner is the coach. Answers its id. That of a made-up coach is made up. */
export async function create(
	database: Kysely<Database>,
	coachId: string,
	fields: GroupFields,
	now: number
): Promise<string> {
	const id = randomUUID();
	await database.transaction().execute(async (step) => {
		const isDemo = Number((await demoPersonOf(step, coachId)) !== null);
		await step
			.insertInto('running_group')
			.values({ ...columnsOf(fields), id, is_demo: isDemo, created_at: now })
			.execute();
		await step
			.insertInto('group_coach')
			.values({ group_id: id, coach_id: coachId, role: 'owner', added_at: now })
			.execute();
	});
	return id;
}

export async function change(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	fields: GroupFields
): Promise<'changed' | 'not-found'> {
	const { numUpdatedRows } = await database
		.updateTable('running_group')
		.set(columnsOf(fields))
		.where('id', '=', groupId)
		.where('id', 'in', idsOwnedBy(database, coachId))
		.executeTakeFirst();
	return numUpdatedRows ? 'changed' : 'not-found';
}

/**
 * Deletes the group with its list, attendance and settings. Its runners keep their accounts and
 * read that it ended, but for those whom nobody could reach any more.
 */
export async function remove(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<'removed' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const members = await step
			.selectFrom('member')
			.select(['runner_id', 'left_at'])
			.where('group_id', '=', groupId)
			.where('runner_id', 'is not', null)
			.execute();
		const { numDeletedRows } = await step
			.deleteFrom('running_group')
			.where('id', '=', groupId)
			.where('id', 'in', idsOwnedBy(step, coachId))
			.executeTakeFirst();
		if (!numDeletedRows) return 'not-found';
		for (const { runner_id, left_at } of members) {
			if (runner_id === null || left_at !== null) continue;
			await audit.record(step, runner_id, now, 'group.ended', { groupId });
		}
		await deleteUnreachable(
			step,
			members.flatMap(({ runner_id }) => runner_id ?? []),
			now
		);
		return 'removed';
	});
}

/**
 * Makes whatever else holds the same group wait until this transaction ends: both databases lock a
 * row that is written. False when there is no such group.
 */
export async function hold(step: Kysely<Database>, groupId: string): Promise<boolean> {
	const { numUpdatedRows } = await step
		.updateTable('running_group')
		.set((of) => ({ created_at: of.ref('created_at') }))
		.where('id', '=', groupId)
		.executeTakeFirst();
	return numUpdatedRows > 0n;
}

function rowsOf(database: Kysely<Database>, coachId: string) {
	return database
		.selectFrom('running_group')
		.innerJoin('group_coach', 'group_coach.group_id', 'running_group.id')
		.where('group_coach.coach_id', '=', coachId)
		.selectAll('running_group')
		.select('group_coach.role');
}

type Row = Awaited<ReturnType<ReturnType<typeof rowsOf>['executeTakeFirstOrThrow']>>;

function groupOf(row: Row): GroupOf {
	return {
		id: row.id,
		role: row.role,
		isDemo: row.is_demo === 1,
		name: row.name,
		usualPlace: row.usual_place,
		timeZone: row.time_zone,
		units: row.units === 'mph' ? 'mph' : 'km/h',
		paceUnits: row.pace_units === 'min/mile' ? 'min/mile' : 'min/km',
		...helpOf(row)
	};
}

function columnsOf(fields: GroupFields) {
	return {
		name: fields.name,
		usual_place: fields.usualPlace,
		time_zone: fields.timeZone,
		units: fields.units,
		pace_units: fields.paceUnits,
		...helpColumnsOf(fields)
	};
}
