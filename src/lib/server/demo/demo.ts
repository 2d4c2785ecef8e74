import type { Kysely } from 'kysely';
import type { Database } from '../database/tables.ts';
import { isDemoPerson, type DemoPerson } from './people.ts';

/** The row that says that the made-up group is here. */
export const DEMO = 'demo';

/** `loading` until the last part of it is there. */
export type DemoState = 'loading' | 'whole';

/** The made-up group, as one request finds it. */
export interface Demo {
	readonly state: DemoState;
	/** As whom this browser looks around; null for who is nobody here, or real. */
	readonly as: DemoPerson | null;
}

/**
 * Null where the made-up group is not in the house.
 * @param userId whoever asks, runner or coach
 */
export async function demoOf(
	database: Kysely<Database>,
	userId: string | null
): Promise<Demo | null> {
	const row = await database
		.selectFrom('house_setting')
		.select('value')
		.where('name', '=', DEMO)
		.executeTakeFirst();
	if (!row) return null;
	const state = row.value === 'whole' ? 'whole' : 'loading';
	return { state, as: userId === null ? null : await demoPersonOf(database, userId) };
}

/** Whether it is in the house. Then nobody real can come in. */
export async function isDemoHere(database: Kysely<Database>): Promise<boolean> {
	return (await demoOf(database, null)) !== null;
}

/** Who of the made-up people somebody is; null for anybody real. */
export async function demoPersonOf(
	database: Kysely<Database>,
	userId: string
): Promise<DemoPerson | null> {
	const row = await database
		.selectFrom('demo_person')
		.select('person')
		.where('user_id', '=', userId)
		.executeTakeFirst();
	return row && isDemoPerson(row.person) ? row.person : null;
}

/** The accounts of the made-up people who are here. A visitor may have deleted one. */
export async function demoUsers(
	database: Kysely<Database>
): Promise<ReadonlyMap<DemoPerson, string>> {
	const rows = await database.selectFrom('demo_person').selectAll().execute();
	return new Map(
		rows.flatMap(({ person, user_id }) => (isDemoPerson(person) ? [[person, user_id]] : []))
	);
}

/** Whether nobody has an account here, and no group is left from anybody. */
export async function isEmptyHouse(database: Kysely<Database>): Promise<boolean> {
	const user = await database.selectFrom('user').select('id').limit(1).executeTakeFirst();
	const group = await database.selectFrom('running_group').select('id').limit(1).executeTakeFirst();
	return !user && !group;
}
