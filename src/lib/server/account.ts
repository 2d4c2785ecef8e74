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
import { readOr, type Missed, type Note } from './readable.ts';
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
 * another sign in: session tokens, passkey material, code hashes. A row that cannot be read is named
 * among `unreadable`, and everything else is there.
 * @throws VaultClosed
 */
export async function exportAll(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
) {
	const unreadable: Missed[] = [];
	const note: Note = (missed) => unreadable.push(missed);
	const all = {
		exportedAt: now,
		runnerId,
		settings: await settings.load(database, runnerId),
		consents: await consents.list(database, runnerId),
		openAnswers: await drafts.load(database, vault, runnerId, now, note),
		results: await screenings.list(database, vault, runnerId, note),
		events: await events.list(database, vault, runnerId, note),
		advice: await advice.list(database, vault, runnerId, note),
		adviceConfirmations: await adviceConfirmations.ofRunner(database, runnerId),
		bandsSet: await bandsSet.forRunner(database, runnerId, note),
		bandDoubts: await bandDoubts.ofRunner(database, runnerId),
		ownOutings: await outingPlans.list(database, { runnerId }, note),
		programmeSteps: await memberSteps.ofRunner(database, runnerId),
		programmeStepChanges: await memberSteps.changesOfRunner(database, runnerId),
		wellAgain: await wellAgain.list(database, runnerId),
		walks: await walks.list(database, runnerId),
		outings: await pastOutings.days(database, runnerId),
		outingEntries: await pastOutings.entriesOf(database, vault, runnerId, null, note),
		pain: await readOr(() => pains.last(database, vault, runnerId), null, note),
		profile: await readOr(() => profiles.load(database, vault, runnerId), null, note),
		guesses: await guesses.list(database, vault, runnerId, note),
		groups: await memberships.list(database, runnerId),
		attendance: await attendance.ofRunner(database, runnerId),
		emergencyContact: await readOr(() => contacts.own(database, vault, runnerId), null, note),
		readings: await readings.list(database, runnerId),
		sessions: await sessions.list(database, runnerId, now),
		passkeys: await passkeys.list(database, runnerId),
		history: await audit.list(database, runnerId, note)
	};
	return { ...all, unreadable };
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
