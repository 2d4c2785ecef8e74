import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { hashToken, makeToken } from './tokens.ts';

const LIFETIME_MS = 60 * 60 * 1000;

/** A link with which a coach sets a new password, once, within the hour. Only its hash is kept. */
export async function create(
	database: Kysely<Database>,
	coachId: string,
	now: number
): Promise<{ token: string; expiresAt: number }> {
	const { token, hash } = makeToken();
	const at = new Date(now);
	const expiresAt = now + LIFETIME_MS;
	await database
		.insertInto('verification')
		.values({
			id: randomUUID(),
			identifier: identifier(hash),
			value: valueOf(coachId),
			expiresAt: new Date(expiresAt),
			createdAt: at,
			updatedAt: at
		})
		.execute();
	return { token, expiresAt };
}

/** The coach of an e-mail, trimmed and in small letters. */
export async function coachOf(database: Kysely<Database>, email: string): Promise<string | null> {
	const row = await database
		.selectFrom('user')
		.innerJoin('coach', 'coach.coach_id', 'user.id')
		.select('coach.coach_id')
		.where('user.email', '=', email)
		.executeTakeFirst();
	return row?.coach_id ?? null;
}

/** Whose link this is, without using it; null, whatever is wrong with it. */
export async function peek(
	database: Kysely<Database>,
	token: string,
	now: number
): Promise<string | null> {
	const row = await database
		.selectFrom('verification')
		.select('value')
		.where('identifier', '=', identifier(hashToken(token)))
		.where('expiresAt', '>', new Date(now))
		.executeTakeFirst();
	return row ? coachIn(row.value) : null;
}

/** Uses the link: whoever comes second gets null. */
export async function use(
	step: Kysely<Database>,
	token: string,
	now: number
): Promise<string | null> {
	const row = await step
		.deleteFrom('verification')
		.where('identifier', '=', identifier(hashToken(token)))
		.where('expiresAt', '>', new Date(now))
		.returning('value')
		.executeTakeFirst();
	return row ? coachIn(row.value) : null;
}

/** Ends all links of a coach, as after a new password. */
export async function endAll(step: Kysely<Database>, coachId: string): Promise<void> {
	await step
		.deleteFrom('verification')
		.where('identifier', 'like', identifier('%'))
		.where('value', '=', valueOf(coachId))
		.execute();
}

const identifier = (hash: string) => `coach-reset:${hash}`;
/** JSON, like the challenges beside it, so that deleting an account finds it. */
const valueOf = (coachId: string) => JSON.stringify({ coachId });
const coachIn = (value: string) => (JSON.parse(value) as { coachId: string }).coachId;
