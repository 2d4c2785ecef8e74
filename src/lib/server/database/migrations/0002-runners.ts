import { sql, type Kysely } from 'kysely';
import { index, key, ofUser, oneOfUser, ownedTable, required, unique } from './columns.ts';

/** What is kept of a runner: the screening, the profile, the settings, and the key's check row. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await screening(database);
	await runner(database);
	await house(database);
}

async function screening(database: Kysely<unknown>): Promise<void> {
	await ownedTable(database, 'consent')
		.addColumn('kind', 'text', required)
		.addColumn('given_at', 'bigint', required)
		.addColumn('withdrawn_at', 'bigint')
		.execute();
	// One open consent of a kind: giving it twice changes nothing.
	await database.schema
		.createIndex('consent_open_idx')
		.on('consent')
		.columns(['runner_id', 'kind'])
		.unique()
		.where(sql.ref('withdrawn_at'), 'is', null)
		.execute();
	await database.schema
		.createTable('screening_draft')
		.addColumn('runner_id', 'text', oneOfUser)
		.addColumn('sealed', 'text', required)
		.addColumn('ruleset_id', 'text', required)
		.addColumn('revision', 'integer', required)
		.addColumn('started_at', 'bigint', required)
		.addColumn('touched_at', 'bigint', required)
		.addColumn('expires_at', 'bigint', required)
		.execute();
	await ownedTable(database, 'screening_result')
		.addColumn('completed_at', 'bigint', required)
		.addColumn('completed_on', 'text', required)
		.addColumn('time_zone', 'text', required)
		.addColumn('ruleset_id', 'text', required)
		.addColumn('ruleset_version', 'text', required)
		.addColumn('sealed', 'text', required)
		.addColumn('invalidated_at', 'bigint')
		.execute();
	await ownedTable(database, 'health_event')
		.addColumn('happened_at', 'bigint', required)
		.addColumn('happened_on', 'text', required)
		.addColumn('sealed', 'text', required)
		.addColumn('withdrawn_at', 'bigint')
		.execute();
	await ownedTable(database, 'advice')
		.addColumn('sealed', 'text', required)
		.addColumn('recorded_at', 'bigint', required)
		.execute();
	await database.schema
		.createTable('well_again')
		.addColumn('runner_id', 'text', ofUser)
		.addColumn('on_date', 'text', required)
		.addColumn('recorded_at', 'bigint', required)
		.addPrimaryKeyConstraint('well_again_pkey', ['runner_id', 'on_date'])
		.execute();
	for (const table of ['consent', 'screening_result', 'health_event', 'advice']) {
		await index(database, table, 'runner_id');
	}
	await index(database, 'screening_draft', 'expires_at');
}

async function runner(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('profile')
		.addColumn('runner_id', 'text', oneOfUser)
		.addColumn('sealed', 'text', required)
		.addColumn('updated_at', 'bigint', required)
		.execute();
	await database.schema
		.createTable('runner_settings')
		.addColumn('runner_id', 'text', oneOfUser)
		.addColumn('name', 'text')
		.addColumn('units', 'text')
		.addColumn('pace_units', 'text')
		.addColumn('time_zone', 'text')
		.addColumn('emergency_number', 'text')
		.addColumn('theme', 'text')
		.execute();
	await ownedTable(database, 'audit')
		.addColumn('at', 'bigint', required)
		.addColumn('what', 'text', required)
		.addColumn('detail', 'text', required)
		.execute();
	await ownedTable(database, 'device_code')
		.addColumn('code_hash', 'text', unique)
		.addColumn('expires_at', 'bigint', required)
		.addColumn('used_at', 'bigint')
		.addColumn('attempts', 'integer', required)
		.execute();
	await index(database, 'audit', 'runner_id');
	await index(database, 'device_code', 'runner_id');
}

async function house(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('vault_check')
		.addColumn('id', 'text', key)
		.addColumn('key_id', 'text', required)
		.addColumn('sealed', 'text', required)
		.execute();
}
