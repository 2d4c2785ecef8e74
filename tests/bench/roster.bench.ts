import { randomBytes, randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { migrate } from '../../src/lib/server/database/migrate.ts';
import { openDatabase } from '../../src/lib/server/database/open.ts';
import * as groups from '../../src/lib/server/groups.ts';
import { readKey } from '../../src/lib/server/keys.ts';
import * as users from '../../src/lib/server/users.ts';
import { openVault } from '../../src/lib/server/vault.ts';
import { load } from '../../src/routes/coach/[group]/+page.server.ts';
import type { BenchCase } from './bench-case.ts';
import { fillGroup } from './frame/full-group.ts';

const RUNNERS = 200;
const anything = z.unknown();

/** A house on SQLite with a full group of invented runners. */
const house = {
	dataFolder: mkdtempSync(join(tmpdir(), 'breathmark-bench-')),
	key: randomBytes(32).toString('hex')
};
process.once('exit', () => rmSync(house.dataFolder, { recursive: true, force: true }));
const database = await openDatabase({ dataFolder: house.dataFolder, databaseUrl: null });
await migrate(database);
const key = readKey(house.key);
if (key === null) throw new Error('the house has no key');
const vault = await openVault(database, key);
const now = Date.now();
const account = {
	email: `${randomUUID()}@coach.invalid`,
	name: 'Coach' as const,
	isAnonymous: false
};
const coachId = await users.insert(database, account, now);
if (coachId === null) throw new Error('two accounts with one address');
const coach = { coachId, name: 'Odile', qualification: null, isHost: true };
await database
	.insertInto('coach')
	.values({ coach_id: coachId, name: 'Odile', qualification: null, is_host: 1, created_at: now })
	.execute();
const groupId = await groups.create(
	database,
	coachId,
	{
		...{ name: 'Lantern Street', usualPlace: null, timeZone: 'Europe/Dublin' },
		...{ units: 'km/h', paceUnits: 'min/km', emergencyNumber: '112' },
		...{ meetingPoint: null, defibrillator: null, firstAider: null }
	},
	now
);
await fillGroup(house, groupId, RUNNERS);

/** All that the server does for the page, but for drawing it. */
const page = () => {
	const event = { locals: { house: { database, vault }, coach, now }, params: { group: groupId } };
	return load(event as unknown as Parameters<typeof load>[0]);
};

/** Reads everybody's results with one query and unseals them, and works nothing out. */
async function unsealed() {
	const rows = await database
		.selectFrom('member')
		.innerJoin('screening_result', 'screening_result.runner_id', 'member.runner_id')
		.where('group_id', '=', groupId)
		.select(['screening_result.id', 'screening_result.runner_id', 'sealed'])
		.execute();
	return rows.map(({ id, runner_id, sealed }) =>
		vault.unseal({ table: 'screening_result', owner: runner_id, row: id }, sealed, anything)
	);
}

export const cases: readonly BenchCase[] = [
	{
		// A tenth of a second is about where waiting begins to be noticed (R. B. Miller, 1968; M).
		name: 'the roster page of 200 runners, on SQLite',
		work: page,
		reference: { name: 'their results read and unsealed', work: unsealed },
		mustReachMicroseconds: 100_000
	}
];
