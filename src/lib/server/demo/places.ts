import type { Kysely } from 'kysely';
import { outingTotals } from '../../outing/totals.ts';
import type { Database } from '../database/tables.ts';
import * as outingPlans from '../outing-plans.ts';
import { demoUsers } from './demo.ts';
import { DEMO_COACH } from './people.ts';

/** Where there is something to see: a visitor may have deleted any of it. */
export interface DemoPlaces {
	/** The desk of the made-up group, the first of its coach's. */
	readonly group: string;
	/** An outing with runs, or the library that it would stand in. */
	readonly outing: string;
}

/** Null where the made-up group was deleted. */
export async function demoPlaces(database: Kysely<Database>): Promise<DemoPlaces | null> {
	const coachId = (await demoUsers(database)).get(DEMO_COACH);
	if (coachId === undefined) return null;
	const row = await database
		.selectFrom('running_group')
		.innerJoin('group_coach', 'group_coach.group_id', 'running_group.id')
		.select('running_group.id')
		.where('group_coach.coach_id', '=', coachId)
		.orderBy('running_group.created_at')
		.executeTakeFirst();
	if (!row) return null;
	const holder = { coach: { coachId, name: '' }, groupId: row.id };
	const withRuns = (await outingPlans.list(database, holder)).find(
		({ outing }) => outingTotals(outing).runningSeconds > 0
	);
	const group = `/coach/${row.id}`;
	return { group, outing: `${group}/outings${withRuns ? `/${withRuns.id}` : ''}` };
}
