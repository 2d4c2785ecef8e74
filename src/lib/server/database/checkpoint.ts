import { sql, type Kysely } from 'kysely';
import { databaseType } from './dialect.ts';
import type { Database } from './tables.ts';

/**
 * Moves SQLite's write-ahead log into the file and empties it, so that what was deleted is in
 * neither. PostgreSQL does this by its own vacuum.
 */
export async function checkpoint(database: Kysely<Database>): Promise<void> {
	if (databaseType(database) !== 'sqlite') return;
	await sql`pragma wal_checkpoint(truncate)`.execute(database);
}
