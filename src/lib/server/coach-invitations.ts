import { randomUUID } from 'node:crypto';
import type { Expression, Kysely, SqlBool } from 'kysely';
import type { Database } from './database/tables.ts';
import { idsOwnedBy } from './groups.ts';
import { isHost } from './hosting.ts';
import { hashToken, makeToken } from './tokens.ts';

const LIFETIME_MS = 7 * 24 * 60 * 60 * 1000;

export interface CoachInvitation {
	readonly id: string;
	readonly createdAt: number;
	readonly expiresAt: number;
	readonly state: 'open' | 'used' | 'revoked' | 'ended';
}

/** What whoever opens an invitation may know: who asks, and into which group, if any. */
export interface OpenInvitation {
	readonly id: string;
	readonly invitedBy: string;
	readonly group: { readonly id: string; readonly name: string } | null;
}

/**
 * A link that lets somebody become a coach, once, within seven days; of a group, as a helper, or of
 * the house alone. It is shown this once: only its hash is kept.
 * @param groupId null for the house, which its host alone may ask for
 * @returns null when this coach may not invite there
 */
export async function create(
	database: Kysely<Database>,
	coachId: string,
	groupId: string | null,
	now: number
): Promise<{ id: string; token: string; expiresAt: number } | null> {
	if (!(await mayInvite(database, coachId, groupId))) return null;
	const id = randomUUID();
	const { token, hash } = makeToken();
	const expiresAt = now + LIFETIME_MS;
	await database
		.insertInto('coach_invitation')
		.values({
			id,
			token_hash: hash,
			group_id: groupId,
			invited_by: coachId,
			created_at: now,
			expires_at: expiresAt
		})
		.execute();
	return { id, token, expiresAt };
}

/** Newest first: a coach's own into the house, or all into a group, for those who may invite. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string | null,
	now: number
): Promise<CoachInvitation[]> {
	if (!(await mayInvite(database, coachId, groupId))) return [];
	const rows = await database
		.selectFrom('coach_invitation')
		.select(['id', 'created_at', 'expires_at', 'used_at', 'revoked_at'])
		.where('group_id', groupId === null ? 'is' : '=', groupId)
		.orderBy('created_at', 'desc')
		.orderBy('id')
		.execute();
	return rows.map((row) => ({
		id: row.id,
		createdAt: row.created_at,
		expiresAt: row.expires_at,
		state:
			row.used_at !== null
				? 'used'
				: row.revoked_at !== null
					? 'revoked'
					: row.expires_at <= now
						? 'ended'
						: 'open'
	}));
}

/** Takes one back that was not used yet. */
export async function revoke(
	database: Kysely<Database>,
	coachId: string,
	invitationId: string,
	now: number
): Promise<'revoked' | 'not-found'> {
	const row = await database
		.selectFrom('coach_invitation')
		.select('group_id')
		.where('id', '=', invitationId)
		.executeTakeFirst();
	if (!row || !(await mayInvite(database, coachId, row.group_id))) return 'not-found';
	const { numUpdatedRows } = await database
		.updateTable('coach_invitation')
		.set({ revoked_at: now })
		.where('id', '=', invitationId)
		.where('used_at', 'is', null)
		.where('revoked_at', 'is', null)
		.executeTakeFirst();
	return numUpdatedRows ? 'revoked' : 'not-found';
}

/** The invitation of a link, or null, whatever is wrong with it. */
export async function find(
	database: Kysely<Database>,
	token: string,
	now: number
): Promise<OpenInvitation | null> {
	const row = await database
		.selectFrom('coach_invitation as invitation')
		.innerJoin('coach as inviter', 'inviter.coach_id', 'invitation.invited_by')
		.leftJoin('running_group', 'running_group.id', 'invitation.group_id')
		.leftJoin('group_coach as owner', (join) =>
			join
				.onRef('owner.group_id', '=', 'invitation.group_id')
				.onRef('owner.coach_id', '=', 'invitation.invited_by')
				.on('owner.role', '=', 'owner')
		)
		.select([
			'invitation.id',
			'inviter.name as invited_by',
			'running_group.id as group_id',
			'running_group.name as group_name'
		])
		.where('invitation.token_hash', '=', hashToken(token))
		.where('invitation.used_at', 'is', null)
		.where('invitation.revoked_at', 'is', null)
		.where('invitation.expires_at', '>', now)
		// Whoever may no longer invite has no open invitations.
		.where(({ or, and, eb }): Expression<SqlBool> =>
			or([
				and([eb('invitation.group_id', 'is', null), eb('inviter.is_host', '=', 1)]),
				and([eb('running_group.id', 'is not', null), eb('owner.coach_id', 'is not', null)])
			])
		)
		.executeTakeFirst();
	if (!row) return null;
	const { id, invited_by, group_id, group_name } = row;
	const group =
		group_id !== null && group_name !== null ? { id: group_id, name: group_name } : null;
	return { id, invitedBy: invited_by, group };
}

/**
 * Uses it, once: whoever comes second gets false. A coach of the group already stays what they are.
 * Call it inside a transaction.
 */
export async function use(
	step: Kysely<Database>,
	{ id, group }: OpenInvitation,
	coachId: string,
	now: number
): Promise<boolean> {
	const { numUpdatedRows } = await step
		.updateTable('coach_invitation')
		.set({ used_at: now })
		.where('id', '=', id)
		.where('used_at', 'is', null)
		.where('revoked_at', 'is', null)
		.executeTakeFirst();
	if (!numUpdatedRows) return false;
	if (group) {
		await step
			.insertInto('group_coach')
			.values({ group_id: group.id, coach_id: coachId, role: 'helper', added_at: now })
			.onConflict((conflict) => conflict.columns(['group_id', 'coach_id']).doNothing())
			.execute();
	}
	return true;
}

async function mayInvite(
	database: Kysely<Database>,
	coachId: string,
	groupId: string | null
): Promise<boolean> {
	if (groupId === null) return isHost(database, coachId);
	const owned = await idsOwnedBy(database, coachId)
		.where('group_id', '=', groupId)
		.executeTakeFirst();
	return owned !== undefined;
}

/**
 * A coach who has an account takes it up.
 * @returns the group that they are in now, if it was for one; null when the invitation does not work
 */
export async function accept(
	database: Kysely<Database>,
	token: string,
	coachId: string,
	now: number
): Promise<{ groupId: string | null } | null> {
	return database.transaction().execute(async (step) => {
		const invitation = await find(step, token, now);
		if (!invitation || !(await use(step, invitation, coachId, now))) return null;
		return { groupId: invitation.group?.id ?? null };
	});
}
