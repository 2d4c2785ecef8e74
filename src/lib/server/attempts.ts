import { createHmac, randomUUID } from 'node:crypto';
import { sql, type Kysely } from 'kysely';
import type { Database } from './database/tables.ts';

/** How often something may be tried. */
export interface Limit {
	readonly most: number;
	readonly withinMs: number;
}

/**
 * Counts a try before it is made, in the database, so that several processes count together.
 * @param who what is counted, such as an e-mail; stored only as a keyed hash
 * @returns whether it may go on
 */
export async function allow(
	database: Kysely<Database>,
	key: Buffer,
	who: string,
	{ most, withinMs }: Limit,
	now: number
): Promise<boolean> {
	const ended = sql<boolean>`"rateLimit"."lastRequest" <= ${now - withinMs}`;
	const { count } = await database
		.insertInto('rateLimit')
		.values({ id: randomUUID(), key: hashed(key, who), count: 1, lastRequest: now })
		.onConflict((conflict) =>
			conflict.column('key').doUpdateSet({
				count: sql<number>`case when ${ended} then 1 else "rateLimit"."count" + 1 end`,
				lastRequest: sql<number>`case when ${ended} then ${now} else "rateLimit"."lastRequest" end`
			})
		)
		.returning('count')
		.executeTakeFirstOrThrow();
	return count <= most;
}

/** Begins to count anew, as after the right password. */
export async function forget(database: Kysely<Database>, key: Buffer, who: string): Promise<void> {
	await database.deleteFrom('rateLimit').where('key', '=', hashed(key, who)).execute();
}

function hashed(key: Buffer, who: string): string {
	return `coach:${createHmac('sha256', key).update(who, 'utf8').digest('base64url')}`;
}
