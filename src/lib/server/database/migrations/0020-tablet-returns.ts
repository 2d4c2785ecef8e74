import type { Kysely } from 'kysely';
import { key, required, unique } from './columns.ts';

/** How somebody without a phone answers again on the group's tablet, and who is doing so now. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('tablet_return')
		.addColumn('member_id', 'text', (column) =>
			column.notNull().primaryKey().references('member.id').onDelete('cascade')
		)
		.addColumn('code_hash', 'text', unique)
		.addColumn('ends_at', 'bigint', required)
		.execute();
	// It goes with its session and with nothing else: a session without it would open everything.
	await database.schema
		.createTable('tablet_session')
		.addColumn('session_id', 'text', (column) =>
			key(column).references('session.id').onDelete('cascade')
		)
		.addColumn('group_id', 'text', required)
		.addColumn('opened_at', 'bigint', required)
		.addColumn('ends_at', 'bigint', required)
		.execute();
}
