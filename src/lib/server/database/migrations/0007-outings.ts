import { sql, type Kysely } from 'kysely';
import { index, key, required } from './columns.ts';

type Column = Parameters<typeof required>[0];

const ofGroup = (column: Column) =>
	column.notNull().references('running_group.id').onDelete('cascade');
/** A person who may leave while what they did stays. */
const byUser = (column: Column) => column.references('user.id').onDelete('set null');

/** Outings that were written down, programmes of a group, and what is planned for a day. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await plans(database);
	await programmes(database);
}

async function plans(database: Kysely<unknown>): Promise<void> {
	// An outing belongs to a group or to a runner alone.
	await database.schema
		.createTable('outing_plan')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', (column) =>
			column.references('running_group.id').onDelete('cascade')
		)
		.addColumn('runner_id', 'text', (column) => column.references('user.id').onDelete('cascade'))
		.addColumn('outing', 'text', required)
		.addColumn('revision', 'integer', required)
		.addColumn('created_at', 'bigint', required)
		.addColumn('changed_at', 'bigint', required)
		.addColumn('changed_by', 'text', byUser)
		.addColumn('changed_by_name', 'text')
		.addColumn('removed_at', 'bigint')
		.addCheckConstraint('outing_plan_of_one', sql`(group_id is null) <> (runner_id is null)`)
		.execute();
	await index(database, 'outing_plan', 'group_id');
	await index(database, 'outing_plan', 'runner_id');
	// Every state that was ever kept, the newest included: whoever saves last takes nothing away.
	await database.schema
		.createTable('outing_plan_version')
		.addColumn('plan_id', 'text', (column) =>
			column.notNull().references('outing_plan.id').onDelete('cascade')
		)
		.addColumn('revision', 'integer', required)
		.addColumn('outing', 'text', required)
		.addColumn('changed_at', 'bigint', required)
		.addColumn('changed_by_name', 'text')
		.addPrimaryKeyConstraint('outing_plan_version_pkey', ['plan_id', 'revision'])
		.execute();
}

async function programmes(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('programme')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('inputs', 'text', required)
		.addColumn('starts_on', 'text', required)
		.addColumn('weekdays', 'text', required)
		.addColumn('holidays', 'text', required)
		.addColumn('revision', 'integer', required)
		.addColumn('created_at', 'bigint', required)
		.addColumn('changed_at', 'bigint', required)
		.addColumn('changed_by', 'text', byUser)
		.addColumn('changed_by_name', 'text', required)
		.addColumn('ended_at', 'bigint')
		.execute();
	// A group follows one programme at a time.
	await database.schema
		.createIndex('programme_once_idx')
		.on('programme')
		.column('group_id')
		.unique()
		.where(sql.ref('ended_at'), 'is', null)
		.execute();
	// What was planned for a day as it was then: a programme or an outing may change later.
	await database.schema
		.createTable('planned_outing')
		.addColumn('id', 'text', key)
		.addColumn('group_id', 'text', ofGroup)
		.addColumn('programme_id', 'text', (column) =>
			column.references('programme.id').onDelete('cascade')
		)
		.addColumn('number', 'integer')
		.addColumn('week', 'integer')
		.addColumn('on_date', 'text', required)
		.addColumn('outing', 'text', required)
		.addColumn('state', 'text', required)
		.addColumn('decided_at', 'bigint')
		.addUniqueConstraint('planned_outing_once', ['group_id', 'on_date'])
		.execute();
	await index(database, 'planned_outing', 'programme_id');
	// Where a member stands elsewhere than the group: outings behind it, or ahead where above zero.
	await database.schema
		.createTable('member_step')
		.addColumn('programme_id', 'text', (column) =>
			column.notNull().references('programme.id').onDelete('cascade')
		)
		.addColumn('member_id', 'text', (column) =>
			column.notNull().references('member.id').onDelete('cascade')
		)
		.addColumn('outings_ahead', 'integer', required)
		.addColumn('set_at', 'bigint', required)
		.addColumn('set_by_name', 'text', required)
		.addPrimaryKeyConstraint('member_step_pkey', ['programme_id', 'member_id'])
		.execute();
	await index(database, 'member_step', 'member_id');
}
