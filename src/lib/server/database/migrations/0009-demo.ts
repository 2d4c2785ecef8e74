import type { Kysely } from 'kysely';
import { oneOfUser, unique } from './columns.ts';

/** Who of the people here is made up, and as whom: nobody else may be looked at through the demo. */
export async function up(database: Kysely<unknown>): Promise<void> {
	await database.schema
		.createTable('demo_person')
		.addColumn('user_id', 'text', oneOfUser)
		.addColumn('person', 'text', unique)
		.execute();
}
