import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { idsOwnedBy } from './groups.ts';
import { isHost } from './hosting.ts';
import { makeToken } from './tokens.ts';

const LIFETIME_MS = 7 * 24 * 60 * 60 * 1000;

export interface CoachInvitation {
	readonly id: string;
	readonly createdAt: number;
	readonly expiresAt: number;
	readonly state: 'open' | 'used' | 'revoked' | 'ended';
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
