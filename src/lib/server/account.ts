import type { Kysely } from 'kysely';
import * as advice from './advice.ts';
import * as attendance from './attendance.ts';
import * as audit from './audit.ts';
import * as consents from './consents.ts';
import * as contacts from './contacts.ts';
import * as adviceConfirmations from './advice-confirmations.ts';
import * as bandDoubts from './band-doubts.ts';
import * as bandsSet from './bands-set.ts';
import { checkpoint } from './database/checkpoint.ts';
import type { Database } from './database/tables.ts';
import * as drafts from './drafts.ts';
import * as events from './events.ts';
import * as memberSteps from './member-steps.ts';
import * as guesses from './guesses.ts';
import * as memberships from './memberships.ts';
import * as outingPlans from './outing-plans.ts';
import * as pains from './pains.ts';
import * as passkeys from './passkeys.ts';
import * as pastOutings from './past-outings.ts';
import * as profiles from './profiles.ts';
import * as readings from './readings.ts';
import * as screenings from './screenings.ts';
import * as sessions from './sessions.ts';
import * as settings from './settings.ts';
import { forgetMembersOfGone } from './unreachable.ts';
import type { Vault } from './vault.ts';
import * as walks from './walks.ts';
import * as wellAgain from './well-again.ts';

/**
 * Everything that is held of a runner, unsealed, as plain JSON. Left out is only what would let
 * another sign in: session tokens, passkey material, code hashes.
 * @throws VaultClosed, Unreadable
 */
export async function exportAll(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
) {
	return {
		exportedAt: now,
		runnerId,
		settings: await settings.load(database, runnerId),
		consents: await consents.list(database, runnerId),
		openAnswers: await drafts.load(database, vault, runnerId, now),
		results: await screenings.list(database, vault, runnerId),
		events: await events.list(database, vault, runnerId),
		advice: await advice.list(database, vault, runnerId),
		adviceConfirmations: await adviceConfirmations.ofRunner(database, runnerId),
		bandsSet: await bandsSet.forRunner(database, runnerId),
		bandDoubts: await bandDoubts.ofRunner(database, runnerId),
		ownOutings: await outingPlans.list(database, { runnerId }),
		programmeSteps: await memberSteps.ofRunner(database, runnerId),
		wellAgain: await wellAgain.list(database, runnerId),
		walks: await walks.list(database, runnerId),
		outings: await pastOutings.days(database, runnerId),
		outingEntries: await pastOutings.entriesOf(database, vault, runnerId),
		pain: await pains.last(database, vault, runnerId),
		profile: await profiles.load(database, vault, runnerId),
		guesses: await guesses.list(database, vault, runnerId),
		groups: await memberships.list(database, runnerId),
		attendance: await attendance.ofRunner(database, runnerId),
		emergencyContact: await contacts.own(database, vault, runnerId),
		readings: await readings.list(database, runnerId),
		sessions: await sessions.list(database, runnerId, now),
		passkeys: await passkeys.list(database, runnerId),
		history: await audit.list(database, runnerId)
	};
}

/**
 * Deletes the runner and every row of theirs, for good. Works with the vault closed. Copies of the
 * database that were made before are beyond its reach.
 */
export async function deleteAll(database: Kysely<Database>, runnerId: string): Promise<void> {
	await database.transaction().execute(async (step) => {
		// A sign-in challenge names its runner inside JSON, out of reach of a foreign key.
		await step.deleteFrom('verification').where('value', 'like', `%"${runnerId}"%`).execute();
		await step.deleteFrom('user').where('id', '=', runnerId).execute();
		await bandsSet.forgetOfGone(step);
		await forgetMembersOfGone(step);
	});
	await checkpoint(database);
}
