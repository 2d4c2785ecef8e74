import type { Kysely } from 'kysely';

/**
 * What was the time of the last answer becomes the time of the urgent one: an answer to another
 * question says nothing about right now.
 */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.alterTable('screening_draft')
		.renameColumn('touched_at', 'urgent_at')
		.execute();
}
