import { sql, type Kysely } from 'kysely';
import { index, key, oneOfUser, required, unique } from './columns.ts';

/** Coaches, their groups, who is in them, and what a coach sets or sees. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await coaches(database);
	await groups(database);
	await members(database);
	await bands(database);
	await trust(database);
}

const ofGroup = (column: Parameters<typeof required>[0]) =>
	column.notNull().references('running_group.id').onDelete('cascade');
const ofMember = (column: Parameters<typeof required>[0]) =>
	column.notNull().references('member.id').onDelete('cascade');
/** A person who may leave while what they did stays. */
const byUser = (column: Parameters<typeof required>[0]) =>
	column.references('user.id').onDelete('set null');

async function coaches(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('coach')
		.addColumn('coach_id', 'text', oneOfUser)
		.addColumn('name', 'text', required)
		.addColumn('qualification', 'text')
		.addColumn('is_host', 'integer', required)
		.addColumn('created_at', 'bigint', required)
		.execute();
	await database.schema
		.createTable('house_setting')
		.addColumn('name', 'text', key)
		.addColumn('value', 'text', required)
		.execute();
	await database.schema
		.createTable('coach_invitation')
		.addColumn('id', 'text', key)
		.addColumn('token_hash', 'text', unique)
		.addColumn('group_id', 'text')
		.addColumn('invited_by', 'text', byUser)
		.addColumn('created_at', 'bigint', required)
		.addColumn('expires_at', 'bigint', required)
		.addColumn('used_at', 'bigint')
		.addColumn('revoked_at', 'bigint')
		.execute();
}

async function groups(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('running_group')
		.addColumn('id', 'text', key)
		.addColumn('name', 'text', required)
		.addColumn('usual_place', 'text')
		.addColumn('time_zone', 'text', required)
		.addColumn('units', 'text', required)
		.addColumn('pace_units', 'text', required)
		.addColumn('emergency_number', 'text')
		.addColumn('meeting_point', 'text')
		.addColumn('defibrillator', 'text')
		.addColumn('first_aider', 'text')
		.addColumn('is_demo', 'integer', required)
		.addColumn('created_at', 'bigint', required)
		.execute();
	await database.schema
		.createTable('group_coach')
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('coach_id', 'text', (column) =>
			column.notNull().references('user.id').onDelete('cascade')
		)
		.addColumn('role', 'text', required)
		.addColumn('added_at', 'bigint', required)
		.addPrimaryKeyConstraint('group_coach_pkey', ['group_id', 'coach_id'])
		.execute();
	await database.schema
		.createTable('group_invitation')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('token', 'text', unique)
		.addColumn('created_by', 'text', byUser)
		.addColumn('created_at', 'bigint', required)
		.addColumn('ends_on', 'text', required)
		.addColumn('revoked_at', 'bigint')
		.execute();
	await database.schema
		.createTable('group_outing')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('started_by', 'text', byUser)
		.addColumn('on_date', 'text', required)
		.addColumn('started_at', 'bigint', required)
		.addColumn('ended_at', 'bigint')
		.execute();
	for (const table of ['group_invitation', 'group_outing'])
		await index(database, table, 'group_id');
}

async function members(database: Kysely<unknown>): Promise<void> {
	// A member may be a name alone until a runner joins under it.
	await database.schema
		.createTable('member')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('runner_id', 'text', byUser)
		.addColumn('name', 'text', required)
		.addColumn('added_at', 'bigint', required)
		.addColumn('joined_at', 'bigint')
		.addColumn('shared_since', 'bigint')
		.addColumn('left_at', 'bigint')
		.execute();
	await index(database, 'member', 'group_id');
	await index(database, 'member', 'runner_id');
	// A runner is in a group once; having left it, they may join again.
	await database.schema
		.createIndex('member_once_idx')
		.on('member')
		.columns(['group_id', 'runner_id'])
		.unique()
		.where(sql.ref('left_at'), 'is', null)
		.execute();
	await database.schema
		.createTable('attendance')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('member_id', 'text', (column) => column.references('member.id').onDelete('set null'))
		.addColumn('name', 'text', required)
		.addColumn('on_date', 'text', required)
		.addColumn('marked_at', 'bigint', required)
		.addColumn('marked_by', 'text', byUser)
		.addUniqueConstraint('attendance_once', ['member_id', 'on_date'])
		.execute();
	await index(database, 'attendance', 'group_id');
	await database.schema
		.createTable('emergency_contact')
		.addColumn('runner_id', 'text', oneOfUser)
		.addColumn('sealed', 'text', required)
		.addColumn('updated_at', 'bigint', required)
		.execute();
}

async function bands(database: Kysely<unknown>): Promise<void> {
	// Append only: the newest row of a member (or, without one, of the group) and phase counts.
	await database.schema
		.createTable('band_setting')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('member_id', 'text', (column) => column.references('member.id').onDelete('cascade'))
		.addColumn('phase', 'text', required)
		.addColumn('setting', 'text')
		.addColumn('runner_note', 'text')
		.addColumn('inner_note', 'text')
		.addColumn('set_by', 'text', byUser)
		.addColumn('set_by_name', 'text', required)
		.addColumn('set_at', 'bigint', required)
		.execute();
	await index(database, 'band_setting', 'group_id');
	await index(database, 'band_setting', 'member_id');
	await database.schema
		.createTable('band_doubt')
		.addColumn('id', 'text', key)
		.addColumn('member_id', 'text', ofMember)
		.addColumn('phase', 'text', required)
		.addColumn('feels', 'text', required)
		.addColumn('said_at', 'bigint', required)
		.addColumn('seen_at', 'bigint')
		.execute();
	await index(database, 'band_doubt', 'member_id');
}

async function trust(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('advice_confirmation')
		.addColumn('advice_id', 'text', (column) =>
			column.notNull().references('advice.id').onDelete('cascade')
		)
		.addColumn('member_id', 'text', ofMember)
		.addColumn('coach_id', 'text', byUser)
		.addColumn('coach_name', 'text', required)
		.addColumn('qualification', 'text')
		.addColumn('confirmed_at', 'bigint', required)
		.addPrimaryKeyConstraint('advice_confirmation_pkey', ['advice_id', 'member_id'])
		.execute();
	// Each reading of a result by a coach, for the runner to see.
	await database.schema
		.createTable('result_reading')
		.addColumn('id', 'text', key)
		.addColumn('runner_id', 'text', (column) =>
			column.notNull().references('user.id').onDelete('cascade')
		)
		.addColumn('coach_id', 'text', byUser)
		.addColumn('coach_name', 'text', required)
		.addColumn('group_name', 'text', required)
		.addColumn('what', 'text', required)
		.addColumn('at', 'bigint', required)
		.execute();
	await index(database, 'result_reading', 'runner_id');
}
