import { sql, type Kysely } from 'kysely';

/** How often a coach looked on the day of a reading, and when the last time: no look goes uncounted. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.alterTable('result_reading')
		.addColumn('times', 'integer', (column) => column.notNull().defaultTo(1))
		.execute();
	await database.schema
		.alterTable('result_reading')
		.addColumn('last_at', 'bigint', (column) => column.notNull().defaultTo(0))
		.execute();
	await sql`update result_reading set last_at = at`.execute(database);
}
