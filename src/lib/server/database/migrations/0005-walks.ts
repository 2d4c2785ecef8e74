import type { Kysely } from 'kysely';
import { ofUser, required } from './columns.ts';

/** Days on which a runner said that they walked an outing: they count for settling in. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('walk')
		.addColumn('runner_id', 'text', ofUser)
		.addColumn('on_date', 'text', required)
		.addColumn('recorded_at', 'bigint', required)
		.addPrimaryKeyConstraint('walk_pkey', ['runner_id', 'on_date'])
		.execute();
}
