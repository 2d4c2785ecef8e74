import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { foldName } from '../forms/person-name.ts';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';
import * as groupInvitations from './group-invitations.ts';
import * as groups from './groups.ts';

/** What somebody sees of a group before joining it: never who else is on its list. */
export interface GroupAtTheDoor {
	readonly name: string;
	readonly usualPlace: string | null;
	readonly coaches: readonly string[];
	readonly isDemo: boolean;
	/** Whoever looks is in it already, under this name. */
	readonly member: { readonly name: string; readonly isSharing: boolean } | null;
}

export type Look =
	| { readonly state: 'open'; readonly group: GroupAtTheDoor }
	| { readonly state: 'ended' | 'revoked' | 'unknown' };

/** What opens behind a link, for this runner or for somebody without an account. */
export async function look(
	database: Kysely<Database>,
	token: string,
	runnerId: string | null,
	now: number
): Promise<Look> {
	const opened = await groupInvitations.open(database, token, now);
	if (opened.state !== 'open') return opened;
	const group = await atTheDoor(database, opened.groupId, runnerId);
	return group ? { state: 'open', group } : { state: 'unknown' };
}

export async function atTheDoor(
	database: Kysely<Database>,
	groupId: string,
	runnerId: string | null
): Promise<GroupAtTheDoor | null> {
	const group = await database
		.selectFrom('running_group')
		.select(['name', 'usual_place', 'is_demo'])
		.where('id', '=', groupId)
		.executeTakeFirst();
	if (!group) return null;
	const coaches = await database
		.selectFrom('group_coach')
		.innerJoin('coach', 'coach.coach_id', 'group_coach.coach_id')
		.select('coach.name')
		.where('group_id', '=', groupId)
		// Owners first.
		.orderBy('role', 'desc')
		.orderBy('added_at')
		.orderBy('coach.name')
		.execute();
	const member = runnerId === null ? null : await memberOf(database, groupId, runnerId);
	return {
		name: group.name,
		usualPlace: group.usual_place,
		isDemo: group.is_demo === 1,
		coaches: coaches.map(({ name }) => name),
		member:
			member && member.left_at === null
				? { name: member.name, isSharing: member.shared_since !== null }
				: null
	};
}

export type Joined =
	| { readonly kind: 'joined' | 'already'; readonly memberId: string; readonly groupId: string }
	| { readonly kind: 'ended' | 'revoked' | 'unknown' };

/**
 * Joins by a link. Calling it says that the runner agreed to share the result; somebody who is in
 * the group already stays the same member, and agrees anew if they had taken it back.
 */
export async function join(
	database: Kysely<Database>,
	token: string,
	runnerId: string,
	name: string,
	now: number
): Promise<Joined> {
	const opened = await groupInvitations.open(database, token, now);
	if (opened.state !== 'open') return { kind: opened.state };
	return enter(database, opened.groupId, runnerId, name, now);
}

/**
 * Joins a group that the caller knows to be open to this runner. Whoever else joins it meanwhile
 * waits, so that a name is claimed once.
 */
export async function enter(
	database: Kysely<Database>,
	groupId: string,
	runnerId: string,
	name: string,
	now: number
): Promise<Joined> {
	return database
		.transaction()
		.execute(async (step) =>
			(await groups.hold(step, groupId))
				? enterOnce(step, { groupId, runnerId, name, now })
				: { kind: 'unknown' }
		);
}

interface Entering {
	readonly groupId: string;
	readonly runnerId: string;
	readonly name: string;
	readonly now: number;
}

async function enterOnce(step: Kysely<Database>, entering: Entering): Promise<Joined> {
	const { groupId, runnerId, name, now } = entering;
	const before = await memberOf(step, groupId, runnerId);
	if (before?.left_at === null) {
		if (before.shared_since === null) {
			await step
				.updateTable('member')
				.set({ shared_since: now })
				.where('id', '=', before.id)
				.execute();
			await audit.record(step, runnerId, now, 'sharing.given', { groupId });
		}
		return { kind: 'already', memberId: before.id, groupId };
	}
	const claimed = before ? null : await claim(step, groupId, name);
	const member = {
		runner_id: runnerId,
		// How the coach wrote it stays: the list is theirs.
		name: claimed?.name ?? name,
		joined_at: now,
		shared_since: now,
		left_at: null
	};
	const memberId = before?.id ?? claimed?.id ?? randomUUID();
	await step
		.insertInto('member')
		.values({ ...member, id: memberId, group_id: groupId, added_at: now })
		.onConflict((conflict) => conflict.column('id').doUpdateSet(member))
		.execute();
	await audit.record(step, runnerId, now, 'group.joined', { groupId, memberId });
	return { kind: 'joined', memberId, groupId };
}

/**
 * The one name on the coach's list that is this name and nobody's yet. Of two namesakes none is
 * taken: the coach can tell them apart, we cannot.
 */
async function claim(
	step: Kysely<Database>,
	groupId: string,
	name: string
): Promise<{ readonly id: string; readonly name: string } | null> {
	const rows = await step
		.selectFrom('member')
		.select(['id', 'name'])
		.where('group_id', '=', groupId)
		.where('runner_id', 'is', null)
		.where('joined_at', 'is', null)
		.where('left_at', 'is', null)
		.execute();
	const same = rows.filter((row) => foldName(row.name) === foldName(name));
	return same.length === 1 ? (same[0] ?? null) : null;
}

/** The runner's own row in a group: where they are in it, else the last that they left. */
async function memberOf(database: Kysely<Database>, groupId: string, runnerId: string) {
	const rows = await database
		.selectFrom('member')
		.select(['id', 'name', 'shared_since', 'left_at', 'joined_at'])
		.where('group_id', '=', groupId)
		.where('runner_id', '=', runnerId)
		.execute();
	return (
		rows.find(({ left_at }) => left_at === null) ??
		rows.sort((one, other) => (other.left_at ?? 0) - (one.left_at ?? 0))[0]
	);
}
