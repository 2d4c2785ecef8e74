import { sql, type Kysely } from 'kysely';
import { index, key, required } from './columns.ts';

/** Who put a member at which step of a programme, and when: every change, not the newest alone. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('member_step_change')
		.addColumn('id', 'text', key)
		.addColumn('programme_id', 'text', (column) =>
			column.notNull().references('programme.id').onDelete('cascade')
		)
		.addColumn('member_id', 'text', (column) =>
			column.notNull().references('member.id').onDelete('cascade')
		)
		.addColumn('outings_ahead', 'integer', required)
		.addColumn('set_at', 'bigint', required)
		.addColumn('set_by_name', 'text', required)
		.execute();
	await index(database, 'member_step_change', 'programme_id');
	await index(database, 'member_step_change', 'member_id');
	await sql`insert into member_step_change
		(id, programme_id, member_id, outings_ahead, set_at, set_by_name)
		select programme_id || ' ' || member_id, programme_id, member_id, outings_ahead, set_at,
			set_by_name from member_step`.execute(database);
}
