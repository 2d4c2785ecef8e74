import type { Kysely } from 'kysely';

/** When the runner began to answer again: from then on the result no longer counts. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.alterTable('screening_result')
		.addColumn('answered_again_at', 'bigint')
		.execute();
}
