import type { Kysely } from 'kysely';
import type { Database } from '../database/tables.ts';
import { demoUsers } from './demo.ts';
import { DEMO_COACH } from './people.ts';

/** Where the desk of the made-up group is: the first of its coach's. Null when it was deleted. */
export async function demoGroupPath(database: Kysely<Database>): Promise<string | null> {
	const coachId = (await demoUsers(database)).get(DEMO_COACH);
	if (coachId === undefined) return null;
	const row = await database
		.selectFrom('running_group')
		.innerJoin('group_coach', 'group_coach.group_id', 'running_group.id')
		.select('running_group.id')
		.where('group_coach.coach_id', '=', coachId)
		.orderBy('running_group.created_at')
		.executeTakeFirst();
	return row ? `/coach/${row.id}` : null;
}
