import type { Kysely } from 'kysely';
import { index, ownedTable, required } from './columns.ts';

/** What a runner guessed at the end of a phase, and what they then saw. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await ownedTable(database, 'guess')
		.addColumn('guessed_at', 'bigint', required)
		.addColumn('looked_at', 'bigint')
		.addColumn('sealed', 'text', required)
		.execute();
	await index(database, 'guess', 'runner_id');
}
