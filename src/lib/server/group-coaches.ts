import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';

/** One of the coaches of a group, as the others see them. */
export interface GroupCoach {
	readonly coachId: string;
	readonly name: string;
	readonly qualification: string | null;
	readonly role: groups.Role;
	readonly addedAt: number;
}

/** Longest in the group first; empty for who is not a coach of it. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<GroupCoach[]> {
	const rows = await database
		.selectFrom('group_coach')
		.innerJoin('coach', 'coach.coach_id', 'group_coach.coach_id')
		.select(['group_coach.coach_id', 'coach.name', 'coach.qualification', 'role', 'added_at'])
		.where('group_coach.group_id', '=', groupId)
		.where('group_coach.group_id', 'in', groups.idsOf(database, coachId))
		.orderBy('added_at')
		.orderBy('group_coach.coach_id')
		.execute();
	return rows.map((row) => ({
		coachId: row.coach_id,
		name: row.name,
		qualification: row.qualification,
		role: row.role,
		addedAt: row.added_at
	}));
}

/** A group has an owner at all times: its last one neither leaves nor becomes a helper. */
export type Changed = 'changed' | 'last-owner' | 'not-found';

/** An owner makes a helper an owner, or the other way round; perhaps themselves. */
export async function setRole(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	otherId: string,
	role: groups.Role
): Promise<Changed> {
	return among(database, groupId, async (step, coaches) => {
		if (!isOwner(coaches, coachId) || !coaches.some((one) => one.coach_id === otherId)) {
			return 'not-found';
		}
		if (role === 'helper' && isLastOwner(coaches, otherId)) return 'last-owner';
		await of(step.updateTable('group_coach').set({ role }), groupId, otherId).execute();
		return 'changed';
	});
}

/** An owner takes another coach off the group. */
export async function dismiss(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	otherId: string
): Promise<Changed> {
	return among(database, groupId, async (step, coaches) => {
		if (!isOwner(coaches, coachId) || !coaches.some((one) => one.coach_id === otherId)) {
			return 'not-found';
		}
		return takeOff(step, groupId, coaches, otherId);
	});
}

export async function leave(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<Changed> {
	return among(database, groupId, async (step, coaches) =>
		coaches.some((one) => one.coach_id === coachId)
			? takeOff(step, groupId, coaches, coachId)
			: 'not-found'
	);
}

type Coaches = readonly { readonly coach_id: string; readonly role: groups.Role }[];

/** Two coaches who change the same group wait for each other: the second sees what the first did. */
function among(
	database: Kysely<Database>,
	groupId: string,
	change: (step: Kysely<Database>, coaches: Coaches) => Promise<Changed>
): Promise<Changed> {
	return database.transaction().execute(async (step) => {
		await groups.hold(step, groupId);
		const coaches = await step
			.selectFrom('group_coach')
			.select(['coach_id', 'role'])
			.where('group_id', '=', groupId)
			.execute();
		return change(step, coaches);
	});
}

async function takeOff(
	step: Kysely<Database>,
	groupId: string,
	coaches: Coaches,
	coachId: string
): Promise<Changed> {
	if (isLastOwner(coaches, coachId)) return 'last-owner';
	await of(step.deleteFrom('group_coach'), groupId, coachId).execute();
	return 'changed';
}

const isOwner = (coaches: Coaches, coachId: string) =>
	coaches.some((one) => one.coach_id === coachId && one.role === 'owner');

const isLastOwner = (coaches: Coaches, coachId: string) =>
	isOwner(coaches, coachId) && coaches.filter(({ role }) => role === 'owner').length === 1;

function of<Query extends { where(column: 'group_id' | 'coach_id', is: '=', id: string): Query }>(
	query: Query,
	groupId: string,
	coachId: string
): Query {
	return query.where('group_id', '=', groupId).where('coach_id', '=', coachId);
}
