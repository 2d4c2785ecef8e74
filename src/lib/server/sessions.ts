import type { Kysely } from 'kysely';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';

/** A device on which the runner is signed in. Its token never leaves the server. */
export interface DeviceSession {
	readonly id: string;
	readonly startedAt: number;
	/** To the day: a session is touched once a day. */
	readonly lastSeenAt: number;
	/** What the browser calls itself. */
	readonly browser: string;
}

/** The living sessions, last seen first. */
export async function list(
	database: Kysely<Database>,
	runnerId: string,
	now: number
): Promise<DeviceSession[]> {
	const rows = await database
		.selectFrom('session')
		.select(['id', 'createdAt', 'updatedAt', 'userAgent'])
		.where('userId', '=', runnerId)
		.where('expiresAt', '>', new Date(now))
		.orderBy('updatedAt', 'desc')
		.orderBy('id')
		.execute();
	return rows.map((row) => ({
		id: row.id,
		startedAt: new Date(row.createdAt).getTime(),
		lastSeenAt: new Date(row.updatedAt).getTime(),
		browser: row.userAgent ?? ''
	}));
}

/** Signs one device out. */
export async function revoke(
	database: Kysely<Database>,
	runnerId: string,
	sessionId: string,
	now: number
): Promise<'revoked' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('session')
		.where('id', '=', sessionId)
		.where('userId', '=', runnerId)
		.executeTakeFirst();
	if (!numDeletedRows) return 'not-found';
	await audit.record(database, runnerId, now, 'session.revoked', { sessionId });
	return 'revoked';
}

/** Signs every device out but this one. Answers how many. */
export async function revokeOthers(
	database: Kysely<Database>,
	runnerId: string,
	sessionId: string,
	now: number
): Promise<number> {
	const { numDeletedRows } = await database
		.deleteFrom('session')
		.where('userId', '=', runnerId)
		.where('id', '!=', sessionId)
		.executeTakeFirst();
	const count = Number(numDeletedRows);
	if (count > 0) await audit.record(database, runnerId, now, 'session.revoked', { count });
	return count;
}
