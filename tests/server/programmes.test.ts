import { describe, expect, it } from 'vitest';
import type { Coach } from '$lib/server/coaches.ts';
import * as groups from '$lib/server/groups.ts';
import { placeOf } from '$lib/server/member-place.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as roster from '$lib/server/roster.ts';
import { join, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';
import { plainWishes, unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const words: programmes.ProgrammeWords = {
	inputs: plainWishes,
	startsOn: '2026-11-30',
	weekdays: [1, 4],
	holidays: ['2026-12-24']
};

const days = ['2026-11-30', '2026-12-03', '2026-12-07'];
const planned = days.map((onDate, index): programmes.ToPlan => ({
	number: index + 1,
	week: index < 2 ? 1 : 2,
	onDate,
	outing: { ...unevenRuns, name: `Outing ${index + 1}` }
}));

describe.each(DATABASES)('the programme of a group on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		return { coach, groupId };
	}

	type At = Awaited<ReturnType<typeof led>>;
	const current = ({ coach, groupId }: At) =>
		programmes.current(here.database, here.vault, coach.coachId, groupId);
	const make = ({ coach, groupId }: At, making = { words, planned }) =>
		programmes.make(here.database, here.vault, coach, groupId, making, NOW);
	const change = ({ coach, groupId }: At, revision: number, to = planned) =>
		programmes.change(
			here.database,
			here.vault,
			coach,
			groupId,
			{ words, planned: to, revision },
			NOW
		);
	const list = ({ coach, groupId }: At) =>
		plannedOutings.list(here.database, coach.coachId, groupId);
	const mark = ({ coach, groupId }: At, id: string, state: plannedOutings.PlannedState) =>
		plannedOutings.mark(here.database, coach.coachId, groupId, id, state, NOW);
	const datesOf = async (at: At) => (await list(at)).map(({ onDate }) => onDate);

	it('is none at first, then what its owner made', async () => {
		const at = await led();
		expect(await current(at)).toBeNull();
		expect(await list(at)).toEqual([]);
		expect(await make(at)).toMatchObject({ kind: 'made' });
		expect(await current(at)).toMatchObject({
			...words,
			revision: 1,
			changedByName: 'Odile Marr'
		});
		expect(await list(at)).toMatchObject(planned.map((one) => ({ ...one, state: 'planned' })));
	});

	it('is an owner’s to decide, and a helper’s to lead by', async () => {
		const at = await led();
		const helper = { ...at, coach: await makeHelper(here, at.groupId) };
		expect(await make(helper)).toEqual({ kind: 'not-found' });
		await make(at);
		expect(await change(helper, 1)).toEqual({ kind: 'not-found' });
		const { coachId } = helper.coach;
		expect(await programmes.end(here.database, coachId, at.groupId, NOW)).toBe('not-found');
		expect(await current(helper)).toMatchObject({ revision: 1 });
		const [first] = await list(helper);
		expect(await mark(helper, first?.id ?? '', 'done')).toBe('marked');
	});

	it('is nothing to a coach of another group', async () => {
		const [at, other] = [await led(), await led()];
		await make(at);
		const intruder = { coach: other.coach, groupId: at.groupId };
		const [first] = await list(at);
		expect(await current(intruder)).toBeNull();
		expect(await list(intruder)).toEqual([]);
		expect(await make(intruder)).toEqual({ kind: 'not-found' });
		expect(await change(intruder, 1)).toEqual({ kind: 'not-found' });
		expect(await mark(intruder, first?.id ?? '', 'done')).toBe('not-found');
		expect(await mark(other, first?.id ?? '', 'done')).toBe('not-found');
		const { coachId } = other.coach;
		expect(await programmes.end(here.database, coachId, at.groupId, NOW)).toBe('not-found');
		expect(await list(at)).toMatchObject(planned);
	});

	it('tells whoever changes it second', async () => {
		const at = await led();
		await make(at);
		const moved = planned.slice(0, 1);
		const both = await Promise.all([change(at, 1, moved), change(at, 1, moved)]);
		expect(both.map(({ kind }) => kind).sort()).toEqual(['changed', 'changed-meanwhile']);
		expect(await change(at, 1)).toEqual({ kind: 'changed-meanwhile' });
		expect(await datesOf(at)).toEqual(days.slice(0, 1));
	});

	it('keeps what was done when the days to come change, and never plans upon it', async () => {
		const at = await led();
		await make(at);
		const [first] = await list(at);
		await mark(at, first?.id ?? '', 'missed');
		expect(await change(at, 1)).toEqual({ kind: 'dates-taken', dates: days.slice(0, 1) });
		expect(await datesOf(at)).toEqual(days);
		const rest = planned.slice(1, 2);
		expect(await change(at, 1, rest)).toEqual({ kind: 'changed', revision: 2 });
		expect((await list(at)).map(({ state }) => state)).toEqual(['missed', 'planned']);
	});

	it('takes the place of the one before, and ends', async () => {
		const at = await led();
		await make(at);
		const before = await current(at);
		await make(at, { words, planned: planned.slice(0, 2) });
		expect((await current(at))?.id).not.toBe(before?.id);
		expect(await datesOf(at)).toEqual(days.slice(0, 2));
		const { coachId } = at.coach;
		expect(await programmes.end(here.database, coachId, at.groupId, NOW)).toBe('ended');
		expect(await programmes.end(here.database, coachId, at.groupId, NOW)).toBe('not-found');
		expect(await current(at)).toBeNull();
		expect(await list(at)).toEqual([]);
	});

	it('leaves an outing by itself on its day, and a day has one', async () => {
		const at = await led();
		const { coachId } = at.coach;
		const day = { onDate: days[1] as string, outing: unevenRuns };
		const plan = () => plannedOutings.plan(here.database, coachId, at.groupId, day);
		const alone = await plan();
		expect(alone).toMatchObject({ kind: 'planned' });
		expect(await plan()).toEqual({ kind: 'date-taken' });
		expect(await make(at)).toEqual({ kind: 'dates-taken', dates: [days[1]] });
		expect(await current(at)).toBeNull();
		const id = 'id' in alone ? alone.id : '';
		const { database } = here;
		expect(await plannedOutings.unplan(database, coachId, at.groupId, id)).toBe('removed');
		expect(await plannedOutings.unplan(database, coachId, at.groupId, id)).toBe('not-found');
		expect(await make(at)).toMatchObject({ kind: 'made' });
		const [first] = await list(at);
		const ofProgramme = first?.id ?? '';
		expect(await plannedOutings.unplan(database, coachId, at.groupId, ofProgramme)).toBe(
			'not-found'
		);
	});

	it('is looked at from one date to another', async () => {
		const at = await led();
		await make(at);
		const between = { from: '2026-12-01', until: '2026-12-03' };
		const { coachId } = at.coach;
		const seen = await plannedOutings.list(here.database, coachId, at.groupId, between);
		expect(seen.map(({ onDate }) => onDate)).toEqual(['2026-12-03']);
	});

	it('has a place of their own for whoever is not where the group is', async () => {
		const at = await led();
		const { runnerId, memberId } = await join(here, at.groupId);
		const set = (outingsAhead: number, coach = at.coach) =>
			memberSteps.set(here.database, coach, at.groupId, { memberId, outingsAhead }, NOW);
		const steps = () => memberSteps.list(here.database, at.coach.coachId, at.groupId);
		expect(await set(-1)).toBe('not-found');
		await make(at);
		expect(await set(-1, (await led()).coach)).toBe('not-found');
		expect(await set(-1)).toBe('set');
		expect(await set(-2)).toBe('set');
		expect(await steps()).toMatchObject([{ memberId, outingsAhead: -2, setByName: 'Odile Marr' }]);
		expect(await memberSteps.ofRunner(here.database, runnerId)).toEqual(await steps());
		await expect(set(0.5)).rejects.toThrow(RangeError);
		expect(await set(0)).toBe('set');
		expect(await steps()).toEqual([]);
		const history = await memberSteps.history(
			here.database,
			at.coach.coachId,
			at.groupId,
			memberId
		);
		expect(history.map(({ outingsAhead }) => outingsAhead)).toEqual([0, -2, -1]);
		expect(await memberSteps.changesOfRunner(here.database, runnerId)).toEqual(
			history.toReversed()
		);
	});

	it('keeps the place of a runner who stops sharing from the desk, until they share again', async () => {
		const at = await led();
		const { coach, groupId } = at;
		const { coachId } = coach;
		const { runnerId, memberId } = await join(here, groupId);
		const alone = await nameAlone(here, groupId, 'Gwen');
		await make(at);
		const set = (outingsAhead: number, id = memberId) =>
			memberSteps.set(here.database, coach, groupId, { memberId: id, outingsAhead }, NOW);
		expect(await set(1)).toBe('set');
		expect(await set(1, alone)).toBe('set');
		const group = (await groups.ofCoach(here.database, coachId, groupId)) ?? expect.fail('none');
		const reader = { coach, group };
		const desk = async () => {
			const look = (id: string) => placeOf(here.database, coachId, groupId, id, '2026-11-25');
			const rows = await roster.of(here.database, here.vault, reader, NOW);
			const row = rows.find((one) => one.memberId === memberId);
			return {
				place: (await look(memberId))?.outingsAheadSet ?? null,
				ofNameAlone: (await look(alone))?.outingsAheadSet ?? null,
				steps: (await memberSteps.list(here.database, coachId, groupId)).map((one) => one.memberId),
				history: await memberSteps.history(here.database, coachId, groupId, memberId),
				next: row?.nextOuting?.outingsAhead ?? null,
				found: (await roster.find(here.database, here.vault, reader, memberId, NOW))?.nextOuting
			};
		};
		const before = await desk();
		expect(before).toMatchObject({ place: 1, ofNameAlone: 1, next: 1 });
		expect(before.steps.toSorted()).toEqual([memberId, alone].toSorted());
		expect(before.history).toHaveLength(1);

		await memberships.share(here.database, runnerId, memberId, false, NOW);
		expect(await desk()).toEqual({
			place: null,
			ofNameAlone: 1,
			steps: [alone],
			history: [],
			next: null,
			found: null
		});
		expect(await set(-1)).toBe('not-found');
		// It stays the runner's own.
		expect(await memberSteps.ofRunner(here.database, runnerId)).toMatchObject([
			{ outingsAhead: 1 }
		]);

		await memberships.share(here.database, runnerId, memberId, true, NOW);
		const after = await desk();
		expect({ ...after, steps: after.steps.toSorted() }).toEqual({
			...before,
			steps: before.steps.toSorted()
		});
	});

	it('tells whoever changes a step second, and keeps nothing of theirs', async () => {
		const at = await led();
		const { memberId } = await join(here, at.groupId);
		await make(at);
		const helper = await makeHelper(here, at.groupId);
		const place = async () =>
			(await placeOf(here.database, at.coach.coachId, at.groupId, memberId, '2026-11-25')) ??
			expect.fail('no place');
		const { programmeId, history } = await place();
		const seen = { programmeId, changes: history.length };
		const set = (coach: Coach, outingsAhead: number) =>
			memberSteps.set(here.database, coach, at.groupId, { memberId, outingsAhead, seen }, NOW);
		const both = await Promise.all([set(at.coach, 1), set(helper, -1)]);
		expect(both.toSorted()).toEqual(['changed-meanwhile', 'set']);
		const { outingsAheadSet, history: after } = await place();
		expect(outingsAheadSet).toBe(both[0] === 'set' ? 1 : -1);
		expect(after.map(({ setByName }) => setByName)).toEqual([
			both[0] === 'set' ? 'Odile Marr' : 'Bram Holt'
		]);
		// Of a programme that another one took the place of, too.
		await make(at);
		const again = { memberId, outingsAhead: 1, seen: { programmeId, changes: 0 } };
		expect(await memberSteps.set(here.database, at.coach, at.groupId, again, NOW)).toBe(
			'changed-meanwhile'
		);
	});
});
