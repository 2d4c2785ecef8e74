import { randomUUID } from 'node:crypto';
import { currentRuleset } from '../../../src/lib/screening/rulesets/index.ts';
import * as consents from '../../../src/lib/server/consents.ts';
import { openDatabase } from '../../../src/lib/server/database/open.ts';
import { decide } from '../../../src/lib/server/decide.ts';
import * as joining from '../../../src/lib/server/joining.ts';
import { readKey } from '../../../src/lib/server/keys.ts';
import * as profiles from '../../../src/lib/server/profiles.ts';
import * as screenings from '../../../src/lib/server/screenings.ts';
import * as users from '../../../src/lib/server/users.ts';
import { openVault } from '../../../src/lib/server/vault.ts';
import { plusDays, todayIn } from '../../journeys/days.ts';
import type { House } from '../../journeys/house.ts';
import { baseline } from '../../journeys/walk.ts';

const DAY_MS = 24 * 60 * 60 * 1000;
const TIME_ZONE = 'Europe/Dublin';

/**
 * Fills a group with invented runners, each with a result, a resting pulse and what a capacity is
 * guessed from, straight in the house's own store: by its pages it would take minutes. Every seventh
 * walks where the others run.
 */
export async function fillGroup(
	house: Pick<House, 'dataFolder' | 'key'>,
	groupId: string,
	runners: number
): Promise<void> {
	const database = await openDatabase({ dataFolder: house.dataFolder, databaseUrl: null });
	const key = readKey(house.key);
	if (key === null) throw new Error('the house has no key');
	const vault = await openVault(database, key);
	const now = Date.now();
	const yesterday = plusDays(todayIn(TIME_ZONE), -1);
	for (let nth = 0; nth < runners; nth++) {
		const account = { email: `${randomUUID()}@runner.invalid`, name: 'Runner', isAnonymous: true };
		const runnerId = await users.insert(database, { ...account, name: 'Runner' }, now - DAY_MS);
		if (runnerId === null) throw new Error('two accounts with one address');
		await consents.give(database, runnerId, now - DAY_MS);
		const place = { table: 'screening_draft', owner: runnerId, row: runnerId };
		const answers = { ...baseline, 'now.urgent': ['none'], ...differing(nth) };
		await database
			.insertInto('screening_draft')
			.values({
				runner_id: runnerId,
				sealed: vault.seal(place, answers),
				ruleset_id: currentRuleset.id,
				revision: 1,
				started_at: now,
				urgent_at: now,
				expires_at: now + DAY_MS
			})
			.execute();
		const finish = { decide, timeZone: TIME_ZONE };
		const done = await screenings.complete(database, vault, runnerId, finish, now);
		if (done.kind !== 'stored') throw new Error(`a result came to nothing: ${done.kind}`);
		const mornings = [{ bpm: 58 + (nth % 20), on: yesterday, method: 60 as const }];
		const profile = { ...profiles.EMPTY, mornings, ...askedForCapacity(nth) };
		await profiles.save(database, vault, runnerId, profile, now);
		await joining.enter(database, groupId, runnerId, `Runner ${nth + 1}`, now);
	}
	await database.destroy();
}

function differing(nth: number) {
	return nth % 7 === 0 ? { 'age.years': 52, 'act.hard': 'no' } : { 'age.years': 19 + (nth % 25) };
}

function askedForCapacity(nth: number) {
	return {
		sex: nth % 3 === 0 ? ('man' as const) : ('woman' as const),
		heightCentimetres: 158 + (nth % 30),
		weightKilograms: 55 + (nth % 35),
		activityLevel: nth % 8
	};
}
