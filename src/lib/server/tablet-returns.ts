import type { Kysely } from 'kysely';
import * as attempts from './attempts.ts';
import type { Database } from './database/tables.ts';
import { violation } from './database/errors.ts';
import { drawCode, hashCode, readCode, shownCode } from './typed-codes.ts';

/*
 * Somebody without a phone, who joined on a shared tablet, answers again as the same member: by a
 * code that they wrote down, on a tablet of the same group. What it opens is a session that shows
 * nothing from before: whoever finds the paper, a coach among them, reads nothing by it.
 */

/** A little longer than the longest result, so that the code is there when it has ended. */
const CODE_LASTS_MS = 400 * 24 * 60 * 60 * 1000;
/** The questions take minutes. */
const SESSION_LASTS_MS = 60 * 60 * 1000;

/**
 * Of a group at a time. With 29^8 codes and two hundred members it takes longer than anybody lives to
 * guess one; a group that mistypes together stays far below.
 */
const TRIES = { most: 60, withinMs: 60 * 60 * 1000 };

/** A session that answers again, and nothing else. */
export interface TabletReturn {
	readonly groupId: string;
	/** Nothing from before is shown in it. */
	readonly openedAt: number;
	readonly endsAt: number;
}

/** Makes the code of a runner who is in the group. An earlier one of theirs no longer works. */
export async function create(
	database: Kysely<Database>,
	key: Buffer,
	{ runnerId, groupId }: { readonly runnerId: string; readonly groupId: string },
	now: number
): Promise<string | null> {
	const code = drawCode();
	const member = await database
		.selectFrom('member')
		.select('id')
		.where('runner_id', '=', runnerId)
		.where('group_id', '=', groupId)
		.where('left_at', 'is', null)
		.executeTakeFirst();
	if (!member) return null;
	const row = { code_hash: hashCode(key, ofGroup(groupId, code)), ends_at: now + CODE_LASTS_MS };
	try {
		await database
			.insertInto('tablet_return')
			.values({ ...row, member_id: member.id })
			.onConflict((conflict) => conflict.column('member_id').doUpdateSet(row))
			.execute();
	} catch (error) {
		// Two codes that are equal: draw again.
		if (violation(error) === 'unique') return create(database, key, { runnerId, groupId }, now);
		throw error;
	}
	return shownCode(code);
}

/**
 * The runner whose code this is, in this group alone. Wrong, replaced and ended codes answer alike,
 * and so does the code of somebody who left.
 */
export async function redeem(
	database: Kysely<Database>,
	keys: { readonly code: Buffer; readonly attempts: Buffer },
	groupId: string,
	typed: string,
	now: number
): Promise<{ readonly runnerId: string } | 'wrong' | 'too-many'> {
	const counted = `tablet-return ${groupId}`;
	if (!(await attempts.allow(database, keys.attempts, counted, TRIES, now))) return 'too-many';
	const found = await database
		.selectFrom('tablet_return')
		.innerJoin('member', 'member.id', 'tablet_return.member_id')
		.select('member.runner_id')
		.where('code_hash', '=', hashCode(keys.code, ofGroup(groupId, readCode(typed))))
		.where('ends_at', '>', now)
		.where('member.group_id', '=', groupId)
		.where('member.left_at', 'is', null)
		.executeTakeFirst();
	return found?.runner_id ? { runnerId: found.runner_id } : 'wrong';
}

/** Marks a new session before its cookie leaves the house. */
export async function mark(
	database: Kysely<Database>,
	sessionId: string,
	groupId: string,
	now: number
): Promise<void> {
	await database
		.insertInto('tablet_session')
		.values({
			session_id: sessionId,
			group_id: groupId,
			opened_at: now,
			ends_at: now + SESSION_LASTS_MS
		})
		.execute();
}

/** What such a session is, also after its end; null for every other session. */
export async function ofSession(
	database: Kysely<Database>,
	sessionId: string
): Promise<TabletReturn | null> {
	const row = await database
		.selectFrom('tablet_session')
		.selectAll()
		.where('session_id', '=', sessionId)
		.executeTakeFirst();
	return row ? { groupId: row.group_id, openedAt: row.opened_at, endsAt: row.ends_at } : null;
}

/** Codes and sessions that have ended. */
export async function sweep(database: Kysely<Database>, now: number): Promise<void> {
	await database.deleteFrom('tablet_return').where('ends_at', '<=', now).execute();
	await database
		.deleteFrom('session')
		.where('id', 'in', ({ selectFrom }) =>
			selectFrom('tablet_session').select('session_id').where('ends_at', '<=', now)
		)
		.execute();
}

const ofGroup = (groupId: string, code: string) => `${groupId} ${code}`;
