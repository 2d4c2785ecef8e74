import { describe, expect, it } from 'vitest';
import { phasesOf } from '$lib/outing/outing.ts';
import type { Answers } from '$lib/screening/types.ts';
import * as groups from '$lib/server/groups.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as memberships from '$lib/server/memberships.ts';
import type { House } from '$lib/server/open-house.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as screenings from '$lib/server/screenings.ts';
import * as walks from '$lib/server/walks.ts';
import { enter, join, makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';
import { phase, plainWishes, unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const today = '2026-11-25';
const days = ['2026-11-25', '2026-11-27', '2026-12-01'];
const planned = days.map((onDate, index): programmes.ToPlan => ({
	number: index + 1,
	week: 1,
	onDate,
	outing: { ...unevenRuns, name: `Outing ${index + 1}` }
}));

describe.each(DATABASES)('the outings that lie ahead of a runner on %s', (type) => {
	const here = inHouse(type);

	async function led(answers: Answers = {}) {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const runner = await join(here, groupId, answers);
		const words = { inputs: plainWishes, startsOn: today, weekdays: [3, 5], holidays: [] };
		await programmes.make(here.database, here.vault, coach, groupId, { words, planned }, NOW);
		return { coach, groupId, ...runner };
	}

	const ahead = ({ runnerId }: { runnerId: string }, from = today, until = '2026-12-31') =>
		plannedOutings.forRunner(
			{ database: here.database, vault: here.vault } as House,
			{ runnerId, sessionId: 'x' },
			from,
			until,
			{ now: NOW, today }
		);

	it('are those of the group, whole for who may run', async () => {
		const at = await led();
		const seen = await ahead(at);
		expect(seen).toMatchObject(
			planned.map(({ onDate, number, outing }) => ({ onDate, number, outing }))
		);
		expect(seen[0]).toMatchObject({
			groupId: at.groupId,
			groupName: 'Lantern Street beginners',
			walksInstead: false,
			state: 'planned',
			help: { emergencyNumber: '112', meetingPoint: null, defibrillator: null, firstAider: null }
		});
	});

	it('are those of the days that were asked for, both ends included', async () => {
		const at = await led();
		const seen = await ahead(at, '2026-11-26', '2026-12-01');
		expect(seen.map(({ onDate }) => onDate)).toEqual(days.slice(1));
		expect(await ahead(at, '2027-01-01', '2027-02-01')).toEqual([]);
	});

	it('are brisk walks of the same length for who may walk', async () => {
		const at = await led({ 'age.years': 60, 'act.hard': 'no' });
		const [first] = await ahead(at);
		expect(first?.walksInstead).toBe(true);
		const phases = phasesOf(first?.outing ?? { parts: [] });
		expect(phases.filter(({ kind }) => kind === 'steady-run')).toEqual([]);
		expect(phases.map(({ seconds }) => seconds)).toEqual(
			phasesOf(unevenRuns).map(({ seconds }) => seconds)
		);
		expect(phases[5]).toEqual(phase('brisk-walk', 50));
	});

	it('have short runs for whoever settled in not long ago, whatever the group runs by then', async () => {
		const at = await led({
			'act.days': 1,
			'act.minutes': 20,
			'act.months': 'lt3',
			'act.hard': 'no'
		});
		const runs = async () =>
			phasesOf((await ahead(at))[0]?.outing ?? { parts: [] })
				.filter(({ kind }) => kind === 'steady-run')
				.map(({ seconds }) => seconds);
		for (const on of ['2026-11-13', '2026-11-15', '2026-11-17', '2026-11-19', '2026-11-23']) {
			await walks.record(here.database, at.runnerId, on, NOW);
		}
		await walks.record(here.database, at.runnerId, '2026-11-12', NOW);
		expect(await runs()).toEqual([]);
		await walks.record(here.database, at.runnerId, '2026-11-11', NOW);
		expect(await runs()).toEqual([30, 30, 30]);
		expect((await ahead(at))[0]).toMatchObject({ walksInstead: false, shortenedToSeconds: 30 });
	});

	it('are none for who may not, nor after the result is taken back', async () => {
		expect(await ahead(await led({ 'ill.today': 'yes' }))).toEqual([]);
		const at = await led();
		await screenings.invalidate(here.database, at.runnerId, NOW);
		expect(await ahead(at)).toEqual([]);
	});

	it('are none of a group that the runner left, or shares nothing with', async () => {
		const [left, quiet] = [await led(), await led()];
		await memberships.leave(here.database, left.runnerId, left.memberId, NOW);
		await memberships.share(here.database, quiet.runnerId, quiet.memberId, false, NOW);
		expect(await ahead(left)).toEqual([]);
		expect(await ahead(quiet)).toEqual([]);
	});

	it('are at the runner’s own place, within the programme', async () => {
		const at = await led();
		const step = { memberId: at.memberId, outingsAhead: -1 };
		await memberSteps.set(here.database, at.coach, at.groupId, step, NOW);
		const seen = await ahead(at);
		expect(seen.map(({ number }) => number)).toEqual([1, 1, 2]);
		expect(seen.map(({ outing }) => outing.name)).toEqual(['Outing 1', 'Outing 1', 'Outing 2']);
		expect(seen.map(({ onDate }) => onDate)).toEqual(days);
	});

	it('come from every group, by date', async () => {
		const at = await led();
		const coach = await makeCoach(here);
		const other = await makeGroup(here, coach, 'Canal path');
		const day = { onDate: '2026-11-26', outing: unevenRuns };
		await plannedOutings.plan(here.database, coach.coachId, other, day);
		await enter(here, other, at.runnerId, 'Runner');
		const seen = await ahead(at);
		expect(seen.map(({ onDate }) => onDate)).toEqual([days[0], '2026-11-26', days[1], days[2]]);
		expect(seen[1]).toMatchObject({ groupName: 'Canal path', number: null });
	});

	it('are none of a group without an emergency number, however it came to be without one', async () => {
		const at = await led();
		const { groupId, runnerId, coach } = at;
		const fields = await groups.ofCoach(here.database, coach.coachId, groupId);
		if (fields === null) throw new Error('no group');
		const waiting = () =>
			plannedOutings.waitingForNumber(here.database, runnerId, today, '2026-12-31');
		expect(await waiting()).toEqual([]);
		const withNumber = (emergencyNumber: string | null) =>
			groups.change(here.database, coach.coachId, groupId, { ...fields, emergencyNumber });
		// The number is taken away when all is planned, and more is planned without one.
		await withNumber(null);
		const alone = { onDate: '2026-12-20', outing: unevenRuns };
		const more = await plannedOutings.plan(here.database, coach.coachId, groupId, alone);
		expect(more.kind).toBe('planned');
		expect(await ahead(at)).toEqual([]);
		expect(await waiting()).toEqual(['Lantern Street beginners']);
		// Nobody else learns that the group waits.
		const other = await here.runner();
		const asked = plannedOutings.waitingForNumber(here.database, other, today, '2026-12-31');
		expect(await asked).toEqual([]);
		await withNumber('112');
		expect(await ahead(at)).toHaveLength(planned.length + 1);
		expect(await waiting()).toEqual([]);
	});
});
