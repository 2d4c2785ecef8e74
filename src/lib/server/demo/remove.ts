import type { Kysely } from 'kysely';
import { checkpoint } from '../database/checkpoint.ts';
import type { Database } from '../database/tables.ts';
import { HOST } from '../hosting.ts';
import { SIGN_UP } from '../house-settings.ts';
import { DEMO } from './demo.ts';

/**
 * Deletes the made-up group with everything that was done in it, for good: an empty house is left.
 * Works half-way through loading, twice, and with the vault closed; it never touches what is real.
 */
export async function removeDemo(database: Kysely<Database>): Promise<void> {
	await database.transaction().execute(async (step) => {
		const rows = await step.selectFrom('demo_person').select('user_id').execute();
		const madeUp = rows.map(({ user_id }) => user_id);
		await step
			.deleteFrom('coach_invitation')
			.where(
				'group_id',
				'in',
				step.selectFrom('running_group').select('id').where('is_demo', '=', 1)
			)
			.execute();
		await step.deleteFrom('running_group').where('is_demo', '=', 1).execute();
		for (const userId of madeUp) {
			// A sign-in challenge names its owner inside JSON, out of reach of a foreign key.
			await step.deleteFrom('verification').where('value', 'like', `%"${userId}"%`).execute();
		}
		if (madeUp.length > 0) {
			await step.deleteFrom('coach_invitation').where('invited_by', 'in', madeUp).execute();
			const { numDeletedRows } = await step
				.deleteFrom('house_setting')
				.where('name', '=', HOST)
				.where('value', 'in', madeUp)
				.executeTakeFirst();
			if (numDeletedRows) {
				await step.deleteFrom('house_setting').where('name', '=', SIGN_UP).execute();
			}
			await step.deleteFrom('user').where('id', 'in', madeUp).execute();
		}
		await step.deleteFrom('house_setting').where('name', '=', DEMO).execute();
	});
	await checkpoint(database);
}
