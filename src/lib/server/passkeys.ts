import type { Kysely } from 'kysely';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';

export interface PasskeyEntry {
	readonly id: string;
	readonly name: string | null;
	readonly addedAt: number | null;
}

/** Oldest first. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<PasskeyEntry[]> {
	const rows = await database
		.selectFrom('passkey')
		.select(['id', 'name', 'createdAt'])
		.where('userId', '=', runnerId)
		.orderBy('createdAt')
		.orderBy('id')
		.execute();
	return rows.map(({ id, name, createdAt }) => ({
		id,
		name,
		addedAt: createdAt === null ? null : new Date(createdAt).getTime()
	}));
}

export async function remove(
	database: Kysely<Database>,
	runnerId: string,
	passkeyId: string,
	now: number
): Promise<'removed' | 'not-found'> {
	const { numDeletedRows } = await database
		.deleteFrom('passkey')
		.where('id', '=', passkeyId)
		.where('userId', '=', runnerId)
		.executeTakeFirst();
	if (!numDeletedRows) return 'not-found';
	await audit.record(database, runnerId, now, 'passkey.removed', { passkeyId });
	return 'removed';
}
