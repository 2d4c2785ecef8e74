import { PostgresAdapter, type Kysely } from 'kysely';

export type DatabaseType = 'sqlite' | 'postgres';

/** Which of the two databases this is, for the few places where they differ. */
export function databaseType<Tables>(database: Kysely<Tables>): DatabaseType {
	return database.getExecutor().adapter instanceof PostgresAdapter ? 'postgres' : 'sqlite';
}
