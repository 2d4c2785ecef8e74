import type { Kysely } from 'kysely';
import { required } from './columns.ts';

/** Days that a coach marked as hot for a group. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('hot_day')
		.addColumn('group_id', 'text', (column) =>
			column.notNull().references('running_group.id').onDelete('cascade')
		)
		.addColumn('on_date', 'text', required)
		.addColumn('marked_at', 'bigint', required)
		.addPrimaryKeyConstraint('hot_day_pkey', ['group_id', 'on_date'])
		.execute();
}
