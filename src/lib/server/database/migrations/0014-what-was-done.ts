import type { Kysely } from 'kysely';

/** Which outing a walk comes from, and which of a group's planned outings a runner did. */
export async function up(database: Kysely<unknown>): Promise<void> {
	// Null where the runner said so: such a walk stays when an outing is deleted.
	await database.schema.alterTable('walk').addColumn('outing_run_id', 'text').execute();
	await database.schema.alterTable('past_outing').addColumn('planned_id', 'text').execute();
}
