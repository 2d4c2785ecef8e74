import { PostgresDialect } from 'kysely';

const CONNECTIONS = 10;

/** PostgreSQL by its address. Milliseconds and counts stay far below 2^53, so they are numbers. */
export async function postgresDialect(url: string): Promise<PostgresDialect> {
	const { default: pg } = await import('pg');
	const pool = new pg.Pool({
		connectionString: url,
		max: CONNECTIONS,
		types: {
			getTypeParser: (oid, format) =>
				oid === pg.types.builtins.INT8
					? Number
					: (pg.types.getTypeParser(oid, format) as (text: string) => unknown)
		}
	});
	// An idle connection that the server closes is replaced at the next query; unheard, the event
	// would end the process.
	pool.on('error', () => {});
	return new PostgresDialect({ pool });
}
