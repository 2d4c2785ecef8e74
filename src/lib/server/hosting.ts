import type { Kysely } from 'kysely';
import { byName } from './by-name.ts';
import type { Database } from './database/tables.ts';

/** The row that names the host. Whoever writes it first is the one. */
export const HOST = 'host';

/** Makes this coach the host if there is none. Two who come at once: one of them. */
export async function claim(step: Kysely<Database>, coachId: string): Promise<boolean> {
	const { numInsertedOrUpdatedRows } = await step
		.insertInto('house_setting')
		.values({ name: HOST, value: coachId })
		.onConflict((conflict) => conflict.column('name').doNothing())
		.executeTakeFirst();
	return Boolean(numInsertedOrUpdatedRows);
}

/** The other coaches of the house, by name: for its host alone, who may hand it over to one. */
export async function heirs(
	database: Kysely<Database>,
	hostId: string
): Promise<{ coachId: string; name: string }[]> {
	if (!(await isHost(database, hostId))) return [];
	const rows = await database
		.selectFrom('coach')
		.select(['coach_id', 'name'])
		.where('coach_id', '!=', hostId)
		.execute();
	return byName(rows.map(({ coach_id, name }) => ({ coachId: coach_id, name })));
}

/** Makes another coach the host instead. */
export async function handOver(
	database: Kysely<Database>,
	hostId: string,
	coachId: string
): Promise<'handed-over' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const heir = await step
			.selectFrom('coach')
			.select('coach_id')
			.where('coach_id', '=', coachId)
			.where('coach_id', '!=', hostId)
			.executeTakeFirst();
		if (!heir || !(await hold(step, hostId, coachId))) return 'not-found';
		await step.updateTable('coach').set({ is_host: 0 }).where('coach_id', '=', hostId).execute();
		await step.updateTable('coach').set({ is_host: 1 }).where('coach_id', '=', coachId).execute();
		return 'handed-over';
	});
}

/**
 * The host leaves, as the last coach of the house: the next one to come is its host.
 * @returns false when others are still there, who would be without a host
 */
export async function release(step: Kysely<Database>, hostId: string): Promise<boolean> {
	if (!(await hold(step, hostId, hostId))) return true;
	const other = await step
		.selectFrom('coach')
		.select('coach_id')
		.where('coach_id', '!=', hostId)
		.executeTakeFirst();
	if (other) return false;
	await step.deleteFrom('house_setting').where('name', '=', HOST).execute();
	return true;
}

export async function isHost(database: Kysely<Database>, coachId: string): Promise<boolean> {
	const row = await database
		.selectFrom('coach')
		.select('coach_id')
		.where('coach_id', '=', coachId)
		.where('is_host', '=', 1)
		.executeTakeFirst();
	return row !== undefined;
}

/** Writes the row that only the host has, so that whoever else would do so waits. */
async function hold(step: Kysely<Database>, hostId: string, value: string): Promise<boolean> {
	const { numUpdatedRows } = await step
		.updateTable('house_setting')
		.set({ value })
		.where('name', '=', HOST)
		.where('value', '=', hostId)
		.executeTakeFirst();
	return numUpdatedRows > 0n;
}
