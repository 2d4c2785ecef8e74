import type { Kysely } from 'kysely';
import * as bandsSet from './bands-set.ts';
import type { Database } from './database/tables.ts';
import * as outingPlans from './outing-plans.ts';
import * as readings from './readings.ts';
import * as tabletReturns from './tablet-returns.ts';
import { forgetMembersOfGone } from './unreachable.ts';
import { hasPasskey, isInGroup } from './ways-back.ts';

const DAY_MS = 24 * 60 * 60 * 1000;
const UNUSED_ACCOUNT_MS = 7 * DAY_MS;

/** Deletes what has ended: open answers, device codes, sessions, challenges, unused accounts. */
export async function sweep(database: Kysely<Database>, now: number): Promise<void> {
	await database.deleteFrom('screening_draft').where('expires_at', '<=', now).execute();
	await database.deleteFrom('device_code').where('expires_at', '<=', now).execute();
	await database.deleteFrom('session').where('expiresAt', '<=', new Date(now)).execute();
	await database.deleteFrom('verification').where('expiresAt', '<=', new Date(now)).execute();
	await database
		.deleteFrom('rateLimit')
		.where('lastRequest', '<=', now - DAY_MS)
		.execute();
	await tabletReturns.sweep(database, now);
	await unusedAccounts(database, now);
	await lostAccounts(database, now);
	await bandsSet.forgetOfGone(database);
	await forgetMembersOfGone(database);
	await readings.sweep(database, now);
	await outingPlans.sweep(database, now);
}

/**
 * Sweeps now and every day. The timer keeps no process alive.
 * @returns how to stop it; resolves once a sweep that is on has ended
 */
export function sweepDaily(database: Kysely<Database>, clock: () => number): () => Promise<void> {
	let last: Promise<void> = Promise.resolve();
	const run = () => {
		const now = clock();
		// What is left over goes with the next round; the message names no row.
		last = last
			.then(() => sweep(database, now))
			.catch((error: Error) => console.error(`sweep failed: ${error.name}`));
	};
	run();
	const timer = setInterval(run, DAY_MS);
	timer.unref();
	return () => {
		clearInterval(timer);
		return last;
	};
}

/**
 * Somebody opened the first page and never came back: made over a week ago, not seen for a week,
 * never consented, no passkey to return with, in no group and not a coach. Whatever else makes an
 * account worth keeping belongs into this list.
 */
async function unusedAccounts(database: Kysely<Database>, now: number): Promise<void> {
	const weekAgo = new Date(now - UNUSED_ACCOUNT_MS);
	await database
		.deleteFrom('user')
		.where('createdAt', '<=', weekAgo)
		.where(({ not, exists, selectFrom }) =>
			not(
				exists(
					selectFrom('session')
						.select('session.id')
						.whereRef('session.userId', '=', 'user.id')
						.where('session.updatedAt', '>', weekAgo)
				)
			)
		)
		.where(({ not, exists, selectFrom }) =>
			not(exists(selectFrom('consent').select('consent.id').whereRef('runner_id', '=', 'user.id')))
		)
		.where((user) => user.not(hasPasskey(user)))
		.where(({ not, exists, selectFrom }) =>
			not(exists(selectFrom('coach').select('coach_id').whereRef('coach_id', '=', 'user.id')))
		)
		.where((user) => user.not(isInGroup(user)))
		.execute();
}

/**
 * Nobody can open it again: no session lives and there is no passkey. What stands in it about
 * somebody's health goes with it. A week's grace, for a code that is still on its way. Whoever joined
 * a group on a shared tablet has no session either, and stays for as long as the group keeps them.
 */
async function lostAccounts(database: Kysely<Database>, now: number): Promise<void> {
	await database
		.deleteFrom('user')
		.where('isAnonymous', '=', true)
		.where('createdAt', '<=', new Date(now - UNUSED_ACCOUNT_MS))
		.where(({ not, exists, selectFrom }) =>
			not(
				exists(
					selectFrom('session').select('session.id').whereRef('session.userId', '=', 'user.id')
				)
			)
		)
		.where((user) => user.not(hasPasskey(user)))
		.where((user) => user.not(isInGroup(user)))
		.execute();
}
