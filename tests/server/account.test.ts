import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import * as account from '$lib/server/account.ts';
import * as advice from '$lib/server/advice.ts';
import * as consents from '$lib/server/consents.ts';
import * as contacts from '$lib/server/contacts.ts';
import { checkpoint } from '$lib/server/database/checkpoint.ts';
import { SQLITE_FILE } from '$lib/server/database/open.ts';
import * as deviceCodes from '$lib/server/device-codes.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as events from '$lib/server/events.ts';
import { forgetPulses } from '$lib/server/forget-pulses.ts';
import * as groups from '$lib/server/groups.ts';
import * as guesses from '$lib/server/guesses.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as roster from '$lib/server/roster.ts';
import * as screenings from '$lib/server/screenings.ts';
import * as sessions from '$lib/server/sessions.ts';
import * as settings from '$lib/server/settings.ts';
import { openVault, Unreadable, VaultClosed } from '$lib/server/vault.ts';
import * as walks from '$lib/server/walks.ts';
import * as tabletReturns from '$lib/server/tablet-returns.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import { enter, makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, DAY, freshKey, inHouse, NOW, type InHouse } from './in-house.ts';
import { screened, ZONE } from './sample.ts';
import { unevenRuns } from './sample-outing.ts';

const CODE_KEY = Buffer.alloc(32, 7);

/** A word in an answer that must never be found on the disk. */
const MARKER = 'marker-in-an-answer-5f3a';
const NAME = 'Marker-in-a-name-5f3a';

const NOT_A_RUNNERS = new Set([
	...['rateLimit', 'vault_check', 'house_setting', 'demo_person'],
	...['coach', 'coach_invitation', 'group_coach', 'running_group'],
	...['group_invitation', 'group_outing', 'attendance'],
	...['band_setting', 'band_doubt', 'advice_confirmation'],
	...['outing_plan_version', 'programme', 'planned_outing', 'hot_day', 'member_step'],
	'member_step_change',
	'tablet_return'
]);

/** Puts a row of this runner into every table that can hold one. */
async function fill(here: InHouse): Promise<string> {
	const { database, vault } = here;
	const runner = await here.runner();
	await screened(here, runner);
	const answer = { questionId: 'a.word', answer: MARKER, rulesetId: '2026-11', revision: null };
	await drafts.save(database, vault, runner, answer, NOW);
	const sign = { source: 'prompter', signs: [MARKER], happenedAt: NOW, timeZone: ZONE } as const;
	await events.record(database, vault, runner, sign, NOW);
	const words = { givenOn: '2026-11-20', role: 'doctor', scope: 'walk', limitBpm: 111 } as const;
	await advice.record(database, vault, runner, { ...words, covers: [MARKER] }, NOW);
	await wellAgain.record(database, runner, '2026-11-25', NOW);
	const said = {
		id: '6f1c9c2e-3b7a-4f43-9d62-0c9bb2c1a001',
		outingRunId: '6f1c9c2e-3b7a-4f43-9d62-0c9bb2c1a002',
		at: NOW,
		seq: 0,
		elapsedMs: 0,
		kind: 'pain',
		level: 'new',
		where: 'knee'
	} as const;
	await pastOutings.append(database, vault, runner, [said], { now: NOW, timeZone: ZONE });
	await walks.record(database, runner, '2026-11-25', NOW);
	const profile = { ...profiles.EMPTY, weightKilograms: 71.5 };
	await profiles.save(database, vault, runner, profile, NOW);
	const guess = { on: '2026-11-25', phase: 'brisk-walk', effort: 5, pulseBpm: 123 } as const;
	await guesses.make(database, vault, runner, guess, NOW);
	await settings.save(database, runner, { name: NAME, theme: 'dark' });
	await deviceCodes.create(database, CODE_KEY, runner, NOW);
	await outingPlans.create(database, { runnerId: runner }, unevenRuns, NOW);
	await signInRows(here, runner);
	await inGroup(here, runner);
	return runner;
}

/** What a group and its coach hold of a runner. */
async function inGroup(here: InHouse, runner: string): Promise<void> {
	const { database, vault } = here;
	const coach = await makeCoach(here);
	const groupId = await makeGroup(here, coach);
	await enter(here, groupId, runner, NAME);
	const contact = { name: MARKER, phone: '112', relation: null };
	await contacts.keep(database, vault, runner, contact, NOW);
	const group = await groups.ofCoach(database, coach.coachId, groupId);
	if (!group) throw new Error('no group');
	await roster.of(database, vault, { coach, group }, NOW);
}

async function signInRows({ database }: InHouse, runner: string): Promise<void> {
	const [at, later] = [new Date(NOW), new Date(NOW + DAY)];
	const times = { createdAt: at, updatedAt: at };
	await database
		.insertInto('session')
		.values({ ...times, id: `${runner}-s`, userId: runner, token: `${runner}-t`, expiresAt: later })
		.execute();
	await tabletReturns.mark(database, `${runner}-s`, 'a group', NOW);
	const account_ = { accountId: 'x', providerId: 'x' };
	await database
		.insertInto('account')
		.values({ ...times, ...account_, id: `${runner}-a`, userId: runner })
		.execute();
	const key = { publicKey: 'x', credentialID: 'x', counter: 0, deviceType: 'singleDevice' };
	await database
		.insertInto('passkey')
		.values({ ...key, id: `${runner}-p`, userId: runner, backedUp: false, createdAt: at })
		.execute();
	const value = JSON.stringify({ type: 'registration', userData: { id: runner } });
	await database
		.insertInto('verification')
		.values({ ...times, id: `${runner}-v`, identifier: 'x', value, expiresAt: later })
		.execute();
}

/** Every row of every table as text, by table. */
async function everything({ database }: InHouse): Promise<Record<string, string[]>> {
	const tables = await database.introspection.getTables();
	const rows = tables.map(async ({ name }) => {
		const all = await sql`select * from ${sql.table(name)}`.execute(database);
		return [name, all.rows.map((row) => JSON.stringify(row))] as const;
	});
	return Object.fromEntries(await Promise.all(rows));
}

const tablesWith = (rows: Record<string, string[]>, text: string) =>
	Object.keys(rows)
		.filter((table) => rows[table]?.some((row) => row.includes(text)))
		.sort();

describe.each(DATABASES)('an account on %s', (type) => {
	const here = inHouse(type);

	it('is deleted from every table, and no other one is touched', async () => {
		const [gone, stays] = [await fill(here), await fill(here)];
		const before = await everything(here);
		const kinds = Object.keys(before).filter((table) => !table.startsWith('kysely_'));
		// All but those that belong to nobody, to a coach or to a group: a new table has to join `fill`
		// above. What hangs on a member or an advice names no runner; the tests of bands and of codes follow it.
		const owned = kinds.filter((table) => !NOT_A_RUNNERS.has(table)).sort();
		expect(tablesWith(before, gone)).toEqual(owned);
		expect(tablesWith(before, stays)).toEqual(owned);
		await account.deleteAll(here.database, gone);
		const after = await everything(here);
		expect(tablesWith(after, gone)).toEqual([]);
		for (const table of owned) {
			const of = (rows: typeof before) => rows[table]?.filter((row) => row.includes(stays));
			expect(of(after)).toEqual(of(before));
		}
	});

	it('is deleted with the vault closed too', async () => {
		const gone = await fill(here);
		await openVault(here.database, freshKey());
		await account.deleteAll(here.database, gone);
		expect(tablesWith(await everything(here), gone)).toEqual([]);
	});

	it('deleted twice is deleted', async () => {
		const gone = await fill(here);
		await account.deleteAll(here.database, gone);
		await account.deleteAll(here.database, gone);
		await account.deleteAll(here.database, 'nobody');
	});

	it('is exported whole, in the open, without what would let another sign in', async () => {
		const runner = await fill(here);
		const all = await account.exportAll(here.database, here.vault, runner, NOW);
		const text = JSON.stringify(all);
		expect(JSON.parse(text)).toEqual(all);
		expect(all).toMatchObject({
			runnerId: runner,
			settings: { name: NAME },
			consents: [{ kind: 'answers' }],
			openAnswers: { answers: { 'a.word': MARKER } },
			results: [{ status: 'CLEARED_ALL', ageYears: 34 }],
			events: [{ signs: [MARKER] }],
			advice: [{ limitBpm: 111 }],
			wellAgain: ['2026-11-25'],
			walks: ['2026-11-25'],
			ownOutings: [{ outing: unevenRuns, revision: 1 }],
			outings: [{ onDate: '2026-11-25', removedAt: null }],
			outingEntries: [{ kind: 'pain', where: 'knee' }],
			pain: { level: 'new', where: 'knee' },
			profile: { weightKilograms: 71.5 },
			guesses: [{ phase: 'brisk-walk', pulseBpm: 123, seen: null }],
			groups: [{ groupName: 'Lantern Street beginners', name: NAME }],
			emergencyContact: { name: MARKER, phone: '112' },
			readings: [{ coachName: 'Odile Marr', what: 'result' }],
			sessions: [{ id: `${runner}-s` }],
			passkeys: [{ id: `${runner}-p` }]
		});
		expect(all.unreadable).toEqual([]);
		expect(all.history.map(({ what }) => what)).toContain('result.stored');
		expect(text).not.toContain(`${runner}-t`);
		expect(text).not.toContain('publicKey');
	});

	it.each([
		['screening_result', 'sealed', 'results'],
		['health_event', 'sealed', 'events'],
		['advice', 'sealed', 'advice'],
		['guess', 'sealed', 'guesses'],
		['past_entry', 'sealed', 'outingEntries'],
		['runner_pain', 'sealed', 'pain'],
		['profile', 'sealed', 'profile'],
		['emergency_contact', 'sealed', 'emergencyContact'],
		['outing_plan', 'outing', 'ownOutings'],
		['screening_draft', 'sealed', 'openAnswers'],
		['audit', 'detail', 'history']
	] as const)(
		'is exported with one row of %s that cannot be read, which is named',
		async (table, column, part) => {
			const runner = await fill(here);
			const before = await account.exportAll(here.database, here.vault, runner, NOW);
			await sql`update ${sql.table(table)} set ${sql.ref(column)} = 'spoilt' where runner_id = ${runner}`.execute(
				here.database
			);
			const after = await account.exportAll(here.database, here.vault, runner, NOW);
			const was: unknown = before[part];
			const { [part]: left, unreadable, ...rest } = after;
			expect(left).toEqual(Array.isArray(was) ? [] : null);
			expect(unreadable).toEqual(unreadable.map(({ at }) => ({ table, at })));
			expect(unreadable).toHaveLength(Array.isArray(was) ? was.length : 1);
			expect({ ...rest, [part]: was, unreadable: [] }).toEqual(before);
			await account.deleteAll(here.database, runner);
			expect(tablesWith(await everything(here), runner)).toEqual([]);
		}
	);

	it('keeps every other row of a list of which one cannot be read', async () => {
		const runner = await fill(here);
		const { database, vault } = here;
		const words = { givenOn: '2026-11-21', role: 'nurse', scope: 'walk', limitBpm: null } as const;
		await advice.record(database, vault, runner, { ...words, covers: [] }, NOW + DAY);
		await database
			.updateTable('advice')
			.set({ sealed: 'spoilt' })
			.where('runner_id', '=', runner)
			.where('recorded_at', '=', NOW)
			.execute();
		const all = await account.exportAll(database, vault, runner, NOW);
		expect(all.advice).toMatchObject([{ role: 'nurse' }]);
		expect(all.unreadable).toEqual([{ table: 'advice', at: NOW }]);
		// What opens the gate is not worked out from what is left.
		await expect(advice.list(database, vault, runner)).rejects.toThrow(Unreadable);
	});

	it('keeps every outing of which a line cannot be read, and the others whole', async () => {
		const runner = await fill(here);
		const { database, vault } = here;
		const outing = { outingRunId: '6f1c9c2e-3b7a-4f43-9d62-0c9bb2c1a009', at: NOW, elapsedMs: 0 };
		const talk = { kind: 'talk-answer', talk: 'comfortable', effort: 4, pulse: null } as const;
		const rest = { secondsIntoPhase: 150, speedKmh: null, afterPassage: false, phase: 0 };
		const about = { ...outing, ...talk, ...rest };
		const ids = ['0c9bb2c1a011', '0c9bb2c1a012'].map((end) => `6f1c9c2e-3b7a-4f43-9d62-${end}`);
		const said = ids.map((id, seq) => ({ ...about, id, seq }));
		await pastOutings.append(database, vault, runner, said, { now: NOW, timeZone: ZONE });
		await database
			.updateTable('past_entry')
			.set({ sealed: 'spoilt' })
			.where('id', '=', ids[0] ?? '')
			.execute();
		const all = await account.exportAll(database, vault, runner, NOW);
		expect(all.unreadable).toEqual([{ table: 'past_entry', at: NOW }]);
		const kept = pastOutings.done(all.outings, all.outingEntries);
		expect(kept.map(({ answers }) => answers.length).sort()).toEqual([0, 1]);
		// The page that shows what was done, and stops at what it cannot read, does not go by half.
		await expect(pastOutings.list(database, vault, runner)).rejects.toThrow(Unreadable);
	});

	it('tells which band of a coach cannot be read, and keeps the others', async () => {
		const runner = await fill(here);
		const { database } = here;
		const member = await database
			.selectFrom('member')
			.select(['id', 'group_id'])
			.where('runner_id', '=', runner)
			.executeTakeFirstOrThrow();
		const words = { runner_note: null, inner_note: null, set_by: null, set_by_name: 'Odile Marr' };
		const kept = { ...words, group_id: member.group_id, member_id: member.id, set_at: NOW };
		const setting = { lowFraction: null, highFraction: 0.4, effortLow: 2, effortHigh: 4 };
		const rows = [
			{ ...kept, id: `${runner}-1`, phase: 'brisk-walk', setting: JSON.stringify(setting) },
			{ ...kept, id: `${runner}-2`, phase: 'steady-run', setting: 'spoilt' }
		];
		await database.insertInto('band_setting').values(rows).execute();
		const all = await account.exportAll(database, here.vault, runner, NOW);
		expect(all.bandsSet).toMatchObject([{ phase: 'brisk-walk' }]);
		expect(all.unreadable).toEqual([{ table: 'band_setting', at: NOW }]);
	});

	it('is not exported with the wrong key', async () => {
		const runner = await fill(here);
		const wrong = await openVault(here.database, freshKey());
		await expect(account.exportAll(here.database, wrong, runner, NOW)).rejects.toThrow(VaultClosed);
	});

	it('of somebody else gives nothing, whatever is asked', async () => {
		const { database, vault } = here;
		const [mine, other] = [await fill(here), await here.runner()];
		const sign = (await events.list(database, vault, mine))[0]?.id ?? '';
		const said = (await advice.list(database, vault, mine))[0]?.id ?? '';
		const before = await everything(here);

		expect(await events.withdraw(database, other, sign, NOW)).toBe('not-found');
		expect(await advice.remove(database, other, said, NOW)).toBe('not-found');
		expect(await sessions.revoke(database, other, `${mine}-s`, NOW)).toBe('not-found');
		expect(await sessions.revokeOthers(database, other, 'none', NOW)).toBe(0);
		expect(await passkeys.remove(database, other, `${mine}-p`, NOW)).toBe('not-found');
		const [group] = await memberships.list(database, mine);
		const membership = group?.memberId ?? '';
		expect(await memberships.leave(database, other, membership, NOW)).toBe('not-found');
		expect(await memberships.share(database, other, membership, false, NOW)).toBe('not-found');
		await contacts.remove(database, other, NOW);
		await drafts.discard(database, other);
		await screenings.invalidate(database, other, NOW);
		await consents.withdraw(database, other, NOW);
		await guesses.discardOpen(database, other);
		await guesses.removeAll(database, other);
		await forgetPulses(database, vault, other, NOW);
		expect(tablesWith(await everything(here), mine)).toEqual(tablesWith(before, mine));

		const {
			exportedAt: _,
			runnerId: __,
			history: ___,
			consents: ____,
			...seen
		} = await account.exportAll(database, vault, other, NOW);
		expect(seen).toEqual({
			settings: settings.UNSET,
			openAnswers: null,
			results: [],
			events: [],
			advice: [],
			adviceConfirmations: [],
			bandsSet: [],
			bandDoubts: [],
			ownOutings: [],
			programmeSteps: [],
			programmeStepChanges: [],
			wellAgain: [],
			walks: [],
			outings: [],
			outingEntries: [],
			pain: null,
			profile: profiles.EMPTY,
			guesses: [],
			groups: [],
			attendance: [],
			emergencyContact: null,
			readings: [],
			sessions: [],
			passkeys: [],
			unreadable: []
		});
		for (const [table, rows] of Object.entries(await everything(here))) {
			const of = (all: readonly string[] = []) => all.filter((row) => row.includes(mine));
			expect(of(rows)).toEqual(of(before[table]));
		}
	});
});

describe('the SQLite files', () => {
	const here = inHouse('sqlite');
	const onDisk = (suffix: string) =>
		readFileSync(join(here.place.dataFolder, SQLITE_FILE + suffix)).toString('latin1');

	it('never hold an answer that can be read', async () => {
		await fill(here);
		expect(onDisk('') + onDisk('-wal')).not.toContain(MARKER);
		await checkpoint(here.database);
		expect(onDisk('')).toContain(NAME);
		expect(onDisk('') + onDisk('-wal')).not.toContain(MARKER);
	});

	it('hold nothing of an account that was deleted, not even its name', async () => {
		const runner = await fill(here);
		await settings.save(here.database, runner, { name: 'Gone-without-a-trace' });
		expect(onDisk('') + onDisk('-wal')).toContain('Gone-without-a-trace');
		await account.deleteAll(here.database, runner);
		const left = onDisk('') + onDisk('-wal');
		expect(left).not.toContain('Gone-without-a-trace');
		expect(left).not.toContain(runner);
	});
});
