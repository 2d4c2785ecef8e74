import type { Kysely } from 'kysely';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';

/** A group as one of its runners has it. */
export interface Membership {
	readonly memberId: string;
	readonly groupId: string;
	readonly groupName: string;
	/** The name that the coaches read. */
	readonly name: string;
	readonly joinedAt: number;
	readonly sharedSince: number | null;
	readonly coaches: readonly string[];
}

/** The groups that a runner is in, by name. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<Membership[]> {
	const rows = await database
		.selectFrom('member')
		.innerJoin('running_group', 'running_group.id', 'member.group_id')
		.selectAll('member')
		.select('running_group.name as group_name')
		.where('member.runner_id', '=', runnerId)
		.where('member.left_at', 'is', null)
		.orderBy('group_name')
		.execute();
	if (rows.length === 0) return [];
	const coaches = await database
		.selectFrom('group_coach')
		.innerJoin('coach', 'coach.coach_id', 'group_coach.coach_id')
		.select(['group_id', 'coach.name'])
		.where(
			'group_id',
			'in',
			rows.map(({ group_id }) => group_id)
		)
		// Owners first.
		.orderBy('role', 'desc')
		.orderBy('added_at')
		.orderBy('coach.name')
		.execute();
	return rows.map((row) => ({
		memberId: row.id,
		groupId: row.group_id,
		groupName: row.group_name,
		name: row.name,
		joinedAt: row.joined_at ?? row.added_at,
		sharedSince: row.shared_since,
		coaches: coaches.filter((one) => one.group_id === row.group_id).map((one) => one.name)
	}));
}

/** A coach of a runner's, as they say themselves who they are. */
export interface OwnCoach {
	readonly coachId: string;
	readonly name: string;
	readonly qualification: string | null;
}

/** The coaches of a runner's groups, each once, by name: whom an age rule may be talked over with. */
export async function coachesOf(database: Kysely<Database>, runnerId: string): Promise<OwnCoach[]> {
	const rows = await database
		.selectFrom('member')
		.innerJoin('group_coach', 'group_coach.group_id', 'member.group_id')
		.innerJoin('coach', 'coach.coach_id', 'group_coach.coach_id')
		.select(['coach.coach_id', 'coach.name', 'coach.qualification'])
		.distinct()
		.where('member.runner_id', '=', runnerId)
		.where('member.left_at', 'is', null)
		.orderBy('coach.name')
		.execute();
	return rows.map(({ coach_id, ...said }) => ({ ...said, coachId: coach_id }));
}

/** The coaches see nothing more, at once. The bare list of who was there stays with them. */
export async function leave(
	database: Kysely<Database>,
	runnerId: string,
	memberId: string,
	now: number
): Promise<'left' | 'not-found'> {
	return change(database, runnerId, memberId, now, {
		set: { left_at: now, shared_since: null },
		what: 'group.left',
		done: 'left'
	});
}

/** Whether the coaches of a group see the result. */
export async function share(
	database: Kysely<Database>,
	runnerId: string,
	memberId: string,
	isSharing: boolean,
	now: number
): Promise<'changed' | 'not-found'> {
	return change(database, runnerId, memberId, now, {
		set: { shared_since: isSharing ? now : null },
		what: isSharing ? 'sharing.given' : 'sharing.withdrawn',
		done: 'changed'
	});
}

/** For whoever takes back the agreement to the questions: there is nothing to share any more. */
export async function stopSharing(
	step: Kysely<Database>,
	runnerId: string,
	now: number
): Promise<void> {
	const { numUpdatedRows } = await step
		.updateTable('member')
		.set({ shared_since: null })
		.where('runner_id', '=', runnerId)
		.where('shared_since', 'is not', null)
		.executeTakeFirst();
	if (numUpdatedRows) await audit.record(step, runnerId, now, 'sharing.withdrawn');
}

interface Change<Done> {
	readonly set: { readonly left_at?: number; readonly shared_since: number | null };
	readonly what: audit.AuditWhat;
	readonly done: Done;
}

async function change<Done>(
	database: Kysely<Database>,
	runnerId: string,
	memberId: string,
	now: number,
	{ set, what, done }: Change<Done>
): Promise<Done | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const row = await step
			.updateTable('member')
			.set(set)
			.where('id', '=', memberId)
			.where('runner_id', '=', runnerId)
			.where('left_at', 'is', null)
			.returning('group_id')
			.executeTakeFirst();
		if (!row) return 'not-found';
		await audit.record(step, runnerId, now, what, { groupId: row.group_id });
		return done;
	});
}
