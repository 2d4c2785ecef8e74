import type { Expression, Kysely, SqlBool } from 'kysely';
import type { Database } from './database/tables.ts';
import { hashToken } from './tokens.ts';

/** What whoever opens an invitation may know: who asks, and into which group, if any. */
export interface OpenInvitation {
	readonly id: string;
	readonly invitedBy: string;
	readonly group: { readonly id: string; readonly name: string } | null;
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
