import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { hasPasskey, isInGroup } from './ways-back.ts';

/**
 * Deletes the members whose account is gone, and with them what was set for them. Of who they were
 * nothing stays in a group but the bare list of days.
 */
export async function forgetMembersOfGone(database: Kysely<Database>): Promise<void> {
	await database
		.deleteFrom('member')
		.where('runner_id', 'is', null)
		.where('joined_at', 'is not', null)
		.execute();
}

/**
 * Deletes those of these runners whose data nobody can reach any more, not even they: signed in
 * nowhere, without passkey or living code, and in no group. It is how somebody who used a shared
 * tablet is deleted when their coach takes them off the list.
 */
export async function deleteUnreachable(
	database: Kysely<Database>,
	runnerIds: readonly string[],
	now: number
): Promise<void> {
	if (runnerIds.length === 0) return;
	await database
		.deleteFrom('user')
		.where('id', 'in', runnerIds)
		.where('isAnonymous', '=', true)
		.where(({ not, exists, selectFrom }) =>
			not(
				exists(
					selectFrom('session')
						.select('session.id')
						.whereRef('session.userId', '=', 'user.id')
						.where('session.expiresAt', '>', new Date(now))
						// One that a code of a shared tablet opened leads to nothing of theirs.
						.where('session.id', 'not in', selectFrom('tablet_session').select('session_id'))
				)
			)
		)
		.where((user) => user.not(hasPasskey(user)))
		.where(({ not, exists, selectFrom }) =>
			not(
				exists(
					selectFrom('device_code')
						.select('device_code.id')
						.whereRef('device_code.runner_id', '=', 'user.id')
						.where('device_code.expires_at', '>', now)
				)
			)
		)
		.where((user) => user.not(isInGroup(user)))
		.execute();
	await forgetMembersOfGone(database);
}
