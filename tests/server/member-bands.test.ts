import { beforeAll, describe, expect, it } from 'vitest';
import type { BandSetting } from '$lib/guidance/band-setting.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import type { Answers } from '$lib/screening/types.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import * as memberships from '$lib/server/memberships.ts';
import type { House } from '$lib/server/open-house.ts';
import * as readings from '$lib/server/readings.ts';
import { setMemberBand } from '$lib/server/set-member-band.ts';
import { enter, join, makeCoach, makeGroup, nameAlone, type InGroup } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';
import { screened } from './sample.ts';

// Our own rules, no source, but where a source is named.

const gentle: BandSetting = { lowFraction: 0.45, highFraction: 0.55, effortLow: 4, effortHigh: 5 };
const byTalk: Answers = { 'meds.rate': 'yes', 'meds.why': 'minor' };
const askFirst: Answers = { 'signs.other': ['ankles'] };
const mayWalk: Answers = { 'age.years': 52, 'act.hard': 'no' };

describe.each(DATABASES)('a coach at the bands of the group on %s', (type) => {
	const here = inHouse(type);
	let coach: Coach;
	let groupId: string;
	beforeAll(async () => {
		coach = await makeCoach(here);
		groupId = await makeGroup(here, coach);
	});

	const find = (member: InGroup, who = coach) =>
		memberBands.find(here, who, groupId, member.memberId, NOW);
	const set = (
		member: InGroup,
		setting: BandSetting | null = gentle,
		phase: PhaseKind = 'steady-run'
	) =>
		setMemberBand(
			here,
			coach,
			groupId,
			member.memberId,
			{ phase, setting, runnerNote: null, innerNote: null },
			NOW
		);
	const own = ({ runnerId }: InGroup) =>
		effortBands.of(
			{ database: here.database, vault: here.vault } as House,
			{ runnerId, sessionId: 's' },
			NOW,
			'2026-11-25'
		);

	// Age 34: maximum 184.2 (Tanaka 2001), rest 68, reserve 116.2: 50 and 62 % are 126.1 and 140.04,
	// 45 and 55 % are 120.29 and 131.91 (Karvonen 1957).
	it('sees what the runner sees, by name, and the runner what the coach set', async () => {
		const runner = await join(here, groupId, {}, 'Ines');
		const before = await find(runner);
		expect(before).toMatchObject({ name: 'Ines', today: { open: true, word: 'may-run' } });
		expect(await set(runner)).toBe('set');
		const after = await find(runner);
		const run = after?.desk?.phases.find(({ kind }) => kind === 'steady-run');
		expect(run?.pulse?.low?.bpm).toBeCloseTo(120.29, 6);
		expect(run?.pulse?.high.bpm).toBeCloseTo(131.91, 6);
		expect(run?.set).toMatchObject({ by: 'coach', since: NOW, groupIds: [groupId] });
		const { guidance } = await own(runner);
		if (!guidance.open) throw new Error('it is open');
		const mine = guidance.phases.find(({ kind }) => kind === 'steady-run');
		expect(mine?.pulse).toEqual(run?.pulse);
		expect(mine?.effort).toEqual({ low: 4, high: 5 });
	});

	it('sees of somebody who asks first or is ill the same word, and not one number', async () => {
		const [asks, ill] = [
			await join(here, groupId, askFirst),
			await join(here, groupId, { 'ill.today': 'yes' })
		];
		for (const runner of [asks, ill]) {
			const seen = await find(runner);
			expect(seen).toMatchObject({ today: { open: false, word: 'not-today' }, desk: null });
			expect(Object.keys(seen?.today ?? {}).sort()).toEqual(['open', 'word']);
			expect(await set(runner)).toBe('closed');
		}
	});

	it('sees no beat of somebody who runs by talk, and sets the effort alone', async () => {
		const runner = await join(here, groupId, byTalk);
		const seen = await find(runner);
		expect(seen).toMatchObject({ today: { word: 'may-run-by-talk' }, desk: { pulse: 'off' } });
		expect(JSON.stringify(seen)).not.toMatch(/bpm":[\d{]|H-/);
		expect(await set(runner, { ...gentle, lowFraction: 0.3, highFraction: 0.4 })).toBe('set');
		const subject = { groupId, memberId: runner.memberId };
		const [entry] = (await bandSettings.history(here.database, coach.coachId, subject)) ?? [];
		expect(entry?.setting).toEqual({
			lowFraction: 0.5,
			highFraction: 0.62,
			effortLow: 4,
			effortHigh: 5
		});
		const after = await find(runner);
		expect(after?.desk?.phases.find(({ kind }) => kind === 'steady-run')).toMatchObject({
			effort: { low: 4, high: 5 },
			pulse: null
		});
	});

	it('cannot set a run for somebody who may walk, nor anything above moderate', async () => {
		const runner = await join(here, groupId, mayWalk);
		expect(await set(runner)).toBe('closed');
		expect(await set(runner, { ...gentle, highFraction: 0.6 }, 'brisk-walk')).toBe('beyond');
		expect(await set(runner, { ...gentle, effortHigh: 7 }, 'brisk-walk')).toBe('beyond');
		expect(await set(runner, { ...gentle, highFraction: 0.59 }, 'brisk-walk')).toBe('set');
	});

	it('what was set is cut, never wider, when screening becomes stricter, and comes back after', async () => {
		const runner = await join(here, groupId);
		await set(runner, { lowFraction: 0.6, highFraction: 0.7, effortLow: 5, effortHigh: 6 });
		await set(runner, { ...gentle, highFraction: 0.5 }, 'warm-up-walk');
		await screened(here, runner.runnerId, askFirst, NOW - 1000);
		expect((await find(runner))?.desk).toBeNull();
		expect((await own(runner)).guidance).toEqual({ open: false, code: 'SEEK_ADVICE' });
		await screened(here, runner.runnerId, mayWalk, NOW);
		const seen = (await find(runner))?.desk?.phases ?? [];
		expect(seen.map(({ kind }) => kind)).not.toContain('steady-run');
		for (const { pulse } of seen) expect(pulse?.high.fraction).toBeLessThan(0.6);
	});

	it('in two groups the gentler band counts, on every page alike', async () => {
		const runner = await join(here, groupId);
		const other = await makeCoach(here, 'Tove Lindqvist');
		const harbour = await makeGroup(here, other, 'Harbour walkers');
		const memberId = await enter(here, harbour, runner.runnerId, 'Ines');
		await set(runner, { ...gentle, highFraction: 0.65 });
		const theirs = { phase: 'steady-run', runnerNote: null, innerNote: null } as const;
		const setting = { ...gentle, lowFraction: 0.4, highFraction: 0.5 };
		await setMemberBand(here, other, harbour, memberId, { ...theirs, setting }, NOW + 1);
		const run = (await find(runner))?.desk?.phases.find(({ kind }) => kind === 'steady-run');
		expect(run?.pulse?.high.fraction).toBe(0.5);
		expect(run?.set).toMatchObject({ groupsDiffer: true });
		const { guidance } = await own(runner);
		const mine = guidance.open && guidance.phases.find(({ kind }) => kind === 'steady-run');
		expect(mine).toMatchObject({ pulse: run?.pulse });
	});

	it('leaves a trace that the runner can read, once a day', async () => {
		const runner = await join(here, groupId);
		await find(runner);
		await find(runner);
		expect(await readings.list(here.database, runner.runnerId)).toMatchObject([
			{ coachName: 'Odile Marr', groupName: 'Lantern Street beginners', what: 'bands' }
		]);
	});

	it('sees a bare name of who did not join or does not share, and leaves no trace', async () => {
		const memberId = await nameAlone(here, groupId, 'Gwen');
		const alone = { memberId, runnerId: '' };
		expect(await find(alone)).toEqual({
			id: memberId,
			name: 'Gwen',
			today: { open: false, word: 'not-joined' },
			desk: null,
			course: { kind: 'no-course', why: 'closed' }
		});
		expect(await set(alone)).toBe('not-found');
		const runner = await join(here, groupId);
		await memberships.share(here.database, runner.runnerId, runner.memberId, false, NOW);
		expect(await find(runner)).toMatchObject({ today: { word: 'not-shared' }, desk: null });
		expect(await readings.list(here.database, runner.runnerId)).toEqual([]);
		expect(await set(runner)).toBe('not-found');
	});

	it('of another group finds nobody', async () => {
		const runner = await join(here, groupId);
		const stranger = await makeCoach(here, 'Tove Lindqvist');
		expect(await find(runner, stranger)).toBeNull();
		expect(await memberBands.list(here, stranger, groupId, NOW)).toBeNull();
		const words = {
			phase: 'steady-run',
			setting: gentle,
			runnerNote: null,
			innerNote: null
		} as const;
		expect(await setMemberBand(here, stranger, groupId, runner.memberId, words, NOW)).toBe(
			'not-found'
		);
	});

	it('has everybody on the list in the order of the alphabet, in one look', async () => {
		const leader = await makeCoach(here);
		const group = await makeGroup(here, leader);
		await join(here, group, {}, 'Rashid');
		await join(here, group, askFirst, 'Gwen');
		await join(here, group, byTalk, 'Ágnes');
		const seen = await memberBands.list(here, leader, group, NOW);
		expect(seen?.map(({ name, today }) => [name, today.word])).toEqual([
			['Ágnes', 'may-run-by-talk'],
			['Gwen', 'not-today'],
			['Rashid', 'may-run']
		]);
	});

	it('finds one row shut, and the others open, where a runner’s data cannot be read', async () => {
		const leader = await makeCoach(here);
		const group = await makeGroup(here, leader);
		const broken = await join(here, group, {}, 'Ines');
		await join(here, group, {}, 'Rashid');
		await here.database
			.updateTable('profile')
			.set({ sealed: 'nonsense' })
			.where('runner_id', '=', broken.runnerId)
			.execute();
		const seen = await memberBands.list(here, leader, group, NOW);
		expect(seen?.map(({ today }) => today.word)).toEqual(['not-today', 'may-run']);
	});
});
