import type { Kysely } from 'kysely';
import { oneOfUser, ofUser, required } from './columns.ts';

/** What runners did: outings with what a prompter wrote down, and pain that stops runs. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('past_outing')
		.addColumn('runner_id', 'text', ofUser)
		.addColumn('id', 'text', required)
		.addColumn('began_at', 'bigint', required)
		.addColumn('on_date', 'text', required)
		// An outing that was deleted stays deleted when a phone sends the rest of it later.
		.addColumn('removed_at', 'bigint')
		.addPrimaryKeyConstraint('past_outing_pkey', ['runner_id', 'id'])
		.execute();
	await database.schema
		.createTable('past_entry')
		.addColumn('runner_id', 'text', ofUser)
		.addColumn('id', 'text', required)
		.addColumn('outing_run_id', 'text', required)
		.addColumn('sealed', 'text', required)
		.addColumn('received_at', 'bigint', required)
		.addPrimaryKeyConstraint('past_entry_pkey', ['runner_id', 'id'])
		.execute();
	await database.schema
		.createIndex('past_entry_outing_idx')
		.on('past_entry')
		.columns(['runner_id', 'outing_run_id'])
		.execute();
	await database.schema
		.createTable('runner_pain')
		.addColumn('runner_id', 'text', oneOfUser)
		.addColumn('said_at', 'bigint', required)
		.addColumn('gone_at', 'bigint')
		.addColumn('sealed', 'text', required)
		.execute();
}
