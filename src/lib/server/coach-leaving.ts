import type { Kysely } from 'kysely';
import { byName } from './by-name.ts';
import { checkpoint } from './database/checkpoint.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as hosting from './hosting.ts';

export interface OwnedGroup {
	readonly id: string;
	readonly name: string;
}

/** Groups that would be without an owner. By name. */
export async function onlyOwnerOf(
	database: Kysely<Database>,
	coachId: string
): Promise<OwnedGroup[]> {
	const rows = await database
		.selectFrom('running_group')
		.select(['id', 'name'])
		.where('id', 'in', groups.idsOwnedBy(database, coachId))
		.where(({ not, exists, selectFrom }) =>
			not(
				exists(
					selectFrom('group_coach as other')
						.select('other.coach_id')
						.whereRef('other.group_id', '=', 'running_group.id')
						.where('other.role', '=', 'owner')
						.where('other.coach_id', '!=', coachId)
				)
			)
		)
		.execute();
	return byName(rows);
}

/**
 * Deletes a coach's account, unless a group or the house would be left without anybody who decides
 * over it. What they set for runners stays, under their name alone.
 */
export async function leave(
	database: Kysely<Database>,
	coachId: string
): Promise<'left' | 'only-owner' | 'host'> {
	const answer = await database.transaction().execute(async (step) => {
		const owned = await groups.idsOwnedBy(step, coachId).execute();
		// In one order, so that two owners who leave together wait for each other and do not lock up.
		const inOrder = owned.map(({ group_id }) => group_id).sort();
		for (const groupId of inOrder) await groups.hold(step, groupId);
		if ((await onlyOwnerOf(step, coachId)).length > 0) return 'only-owner';
		if (!(await hosting.release(step, coachId))) return 'host';
		// A sign-in challenge names its owner inside JSON, out of reach of a foreign key.
		await step.deleteFrom('verification').where('value', 'like', `%"${coachId}"%`).execute();
		await step.deleteFrom('user').where('id', '=', coachId).execute();
		return 'left';
	});
	if (answer === 'left') await checkpoint(database);
	return answer;
}
