import { randomBytes, randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { addMonths, compareDates, localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';

/** 128 bits, so that nobody guesses one; short enough for a QR code that prints small. */
const TOKEN_BYTES = 16;
const TOKEN = /^[A-Za-z0-9_-]{22}$/;
const LONGEST_MONTHS = 12;

/** A link for runners. It may be used by many, until it ends or is taken back. */
export interface GroupInvitation {
	readonly id: string;
	readonly token: string;
	readonly createdAt: number;
	/** The last day on which it works, where the group is. */
	readonly endsOn: LocalDate;
	readonly state: 'open' | 'ended' | 'revoked';
}

export type Created =
	| { readonly kind: 'created'; readonly invitation: GroupInvitation }
	| { readonly kind: 'in-the-past' | 'too-far' | 'not-found' };

export async function create(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	endsOn: LocalDate,
	now: number
): Promise<Created> {
	const group = await groups.ofCoach(database, coachId, groupId);
	if (group?.role !== 'owner') return { kind: 'not-found' };
	const today = localDate(now, group.timeZone);
	if (compareDates(endsOn, today) < 0) return { kind: 'in-the-past' };
	if (compareDates(endsOn, addMonths(today, LONGEST_MONTHS)) > 0) return { kind: 'too-far' };
	const id = randomUUID();
	const token = randomBytes(TOKEN_BYTES).toString('base64url');
	const row = { id, group_id: groupId, token, created_by: coachId, created_at: now };
	await database
		.insertInto('group_invitation')
		.values({ ...row, ends_on: endsOn })
		.execute();
	return { kind: 'created', invitation: { id, token, createdAt: now, endsOn, state: 'open' } };
}

/** Every link of the group, newest first, for each of its coaches. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	now: number
): Promise<GroupInvitation[]> {
	const rows = await database
		.selectFrom('group_invitation')
		.innerJoin('running_group', 'running_group.id', 'group_invitation.group_id')
		.selectAll('group_invitation')
		.select('running_group.time_zone')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId))
		.orderBy('group_invitation.created_at', 'desc')
		.orderBy('group_invitation.id')
		.execute();
	return rows.map((row) => ({
		id: row.id,
		token: row.token,
		createdAt: row.created_at,
		endsOn: row.ends_on,
		state: stateOf(row, now)
	}));
}

/** Takes a link back, also one that has ended. Whoever joined by it stays. */
export async function revoke(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	invitationId: string,
	now: number
): Promise<'revoked' | 'not-found'> {
	const { numUpdatedRows } = await database
		.updateTable('group_invitation')
		.set({ revoked_at: now })
		.where('id', '=', invitationId)
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOwnedBy(database, coachId))
		.where('revoked_at', 'is', null)
		.executeTakeFirst();
	return numUpdatedRows ? 'revoked' : 'not-found';
}

/** What a link leads to. One that was taken back and one that ended say no more than that. */
export type Opened =
	| { readonly state: 'open'; readonly groupId: string }
	| { readonly state: 'ended' | 'revoked' | 'unknown' };

export async function open(
	database: Kysely<Database>,
	token: string,
	now: number
): Promise<Opened> {
	if (!TOKEN.test(token)) return { state: 'unknown' };
	const row = await database
		.selectFrom('group_invitation')
		.innerJoin('running_group', 'running_group.id', 'group_invitation.group_id')
		.select(['group_id', 'ends_on', 'revoked_at', 'running_group.time_zone'])
		.where('token', '=', token)
		.executeTakeFirst();
	if (!row) return { state: 'unknown' };
	const state = stateOf(row, now);
	return state === 'open' ? { state, groupId: row.group_id } : { state };
}

interface Row {
	readonly ends_on: LocalDate;
	readonly revoked_at: number | null;
	readonly time_zone: string;
}

function stateOf(row: Row, now: number): GroupInvitation['state'] {
	if (row.revoked_at !== null) return 'revoked';
	return compareDates(localDate(now, row.time_zone), row.ends_on) > 0 ? 'ended' : 'open';
}
