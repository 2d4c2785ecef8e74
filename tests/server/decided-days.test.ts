import { describe, expect, it } from 'vitest';
import { daysToCome } from '$lib/outing/programme/days-to-come.ts';
import { generateProgramme } from '$lib/outing/programme/generate.ts';
import { decide, type Saying } from '$lib/server/decided-days.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import { inputsPlace } from '$lib/server/programme-rows.ts';
import * as programmes from '$lib/server/programmes.ts';
import { makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';
import { plainWishes, unevenRuns } from './sample-outing.ts';

// Our own rules, no source. NOW is 2026-11-25, a Wednesday.

const words: programmes.ProgrammeWords = {
	inputs: plainWishes,
	startsOn: '2026-11-25',
	weekdays: [3, 6],
	holidays: []
};

const planner: programmes.Planner = ({ inputs, ...days }, calendar, today) => {
	const answer = generateProgramme(inputs, (number) => `Outing ${number}`);
	return answer.kind === 'programme' ? daysToCome(answer.weeks, days, calendar, today) : [];
};

describe.each(DATABASES)('what became of the days of a programme on %s', (type) => {
	const here = inHouse(type);

	async function led(to: Partial<programmes.ProgrammeWords> = {}) {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const making = { words: { ...words, ...to }, planned: planner };
		await programmes.make(here.database, here.vault, coach, groupId, making, NOW);
		return { coach, groupId };
	}

	type At = Awaited<ReturnType<typeof led>>;
	const list = ({ coach, groupId }: At) =>
		plannedOutings.list(here.database, coach.coachId, groupId);
	const say = ({ coach, groupId }: At, saying: Saying, now = NOW) =>
		decide(here.database, here.vault, coach.coachId, groupId, saying, planner, now);
	const day = async (at: At, nth: number) => {
		const found = (await list(at))[nth];
		if (!found) throw new Error('no such day');
		return found;
	};
	const numbers = async (at: At, count: number) =>
		(await list(at)).slice(0, count).map(({ number, onDate, state }) => [number, onDate, state]);

	async function missed(at: At, nth: number, now: number) {
		const { id } = await day(at, nth);
		return say(at, { plannedId: id, was: 'planned', state: 'missed' }, now);
	}

	it('moves nothing while all is done, and every day keeps its id', async () => {
		const at = await led();
		const before = await list(at);
		const [first] = before;
		const saying = { plannedId: first?.id ?? '', was: 'planned', state: 'done' } as const;
		expect(await say(at, saying)).toBe('decided');
		const after = await list(at);
		expect(after.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
		expect(after[0]).toMatchObject({ state: 'done', number: 1 });
	});

	it('a week that was missed comes again, and what is taken back moves back', async () => {
		const at = await led();
		const before = await list(at);
		await missed(at, 0, NOW);
		expect(await missed(at, 1, NOW + 3 * DAY)).toBe('decided');
		expect(await numbers(at, 4)).toEqual([
			[1, '2026-11-25', 'missed'],
			[2, '2026-11-28', 'missed'],
			[1, '2026-12-02', 'planned'],
			[2, '2026-12-05', 'planned']
		]);
		expect(await list(at)).toHaveLength(before.length + 2);
		const { id } = await day(at, 1);
		const back = { plannedId: id, was: 'missed', state: 'planned' } as const;
		expect(await say(at, back, NOW + 4 * DAY)).toBe('decided');
		expect(await numbers(at, 4)).toEqual([
			[1, '2026-11-25', 'missed'],
			[2, '2026-11-28', 'planned'],
			[3, '2026-12-02', 'planned'],
			[4, '2026-12-05', 'planned']
		]);
	});

	it('nothing became of a day that has not come', async () => {
		const at = await led();
		expect(await missed(at, 1, NOW)).toBe('not-yet');
		expect(await day(at, 1)).toMatchObject({ state: 'planned' });
	});

	it('whoever says it second is told, and nothing of the first is lost', async () => {
		const at = await led();
		const helper = { ...at, coach: await makeHelper(here, at.groupId) };
		const { id } = await day(at, 0);
		const both = await Promise.all([
			say(at, { plannedId: id, was: 'planned', state: 'missed' }),
			say(helper, { plannedId: id, was: 'planned', state: 'missed' })
		]);
		expect([...both].sort()).toEqual(['changed-meanwhile', 'decided']);
		const late = await say(helper, { plannedId: id, was: 'planned', state: 'done' });
		expect(late).toBe('changed-meanwhile');
		expect(await day(at, 0)).toMatchObject({ state: 'missed' });
	});

	it('a coach of another group says nothing of it', async () => {
		const [at, other] = [await led(), await led()];
		const { id } = await day(at, 0);
		const saying = { plannedId: id, was: 'planned', state: 'done' } as const;
		expect(await say({ ...other, groupId: at.groupId }, saying)).toBe('not-found');
		expect(await say(other, saying)).toBe('not-found');
	});

	it('an outing by itself keeps its day, and the programme goes around it', async () => {
		const at = await led();
		const { coachId } = at.coach;
		const alone = { onDate: '2026-12-02', outing: unevenRuns };
		const plan = () => plannedOutings.plan(here.database, coachId, at.groupId, alone);
		expect(await plan()).toEqual({ kind: 'date-taken' });
		const { revision } =
			(await programmes.current(here.database, here.vault, coachId, at.groupId)) ?? {};
		const holidays = [alone.onDate];
		const making = { words: { ...words, holidays }, planned: planner, revision: revision ?? 0 };
		await programmes.change(here.database, here.vault, at.coach, at.groupId, making, NOW);
		expect(await plan()).toMatchObject({ kind: 'planned' });
		await missed(at, 0, NOW);
		expect(await numbers(at, 4)).toEqual([
			[1, '2026-11-25', 'missed'],
			[2, '2026-11-28', 'planned'],
			[null, '2026-12-02', 'planned'],
			[3, '2026-12-05', 'planned']
		]);
	});

	it('what passed without a word stays when the programme is replaced or ends', async () => {
		const at = await led();
		const later = NOW + 2 * DAY;
		const making = { words: { ...words, startsOn: '2026-11-28' }, planned: planner };
		await programmes.make(here.database, here.vault, at.coach, at.groupId, making, later);
		expect(await numbers(at, 2)).toEqual([
			[1, '2026-11-25', 'planned'],
			[1, '2026-11-28', 'planned']
		]);
		await programmes.end(here.database, at.coach.coachId, at.groupId, later);
		expect(await numbers(at, 9)).toEqual([[1, '2026-11-25', 'planned']]);
	});

	it('what a programme was made from cannot be read: said, and nothing is lost or moved', async () => {
		const at = await led();
		const before = await list(at);
		const { id } = await here.database
			.selectFrom('programme')
			.select('id')
			.where('group_id', '=', at.groupId)
			.executeTakeFirstOrThrow();
		const sealed = (content: unknown, owner = at.groupId) =>
			here.vault.seal(inputsPlace(owner, id), content);
		const broken = { ...plainWishes, weeks: 'many' };
		const moved = sealed(plainWishes, 'another group');
		// Plain JSON counts for nothing either: anybody who reaches the rows could write it.
		for (const inputs of [sealed(broken), sealed([]), moved, JSON.stringify(plainWishes), '']) {
			await here.database.updateTable('programme').set({ inputs }).execute();
			const { coachId } = at.coach;
			const read = await programmes.current(here.database, here.vault, coachId, at.groupId);
			expect(read).toMatchObject({ inputs: null, weekdays: [3, 6], revision: 1 });
		}
		expect(await missed(at, 0, NOW)).toBe('decided');
		expect((await list(at)).map(({ id }) => id)).toEqual(before.map(({ id }) => id));
	});

	it('is made from wishes that can be wished, or not at all', async () => {
		const at = await led();
		const inputs = { ...plainWishes, weeks: 99 };
		const making = { words: { ...words, inputs }, planned: [] };
		await expect(
			programmes.make(here.database, here.vault, at.coach, at.groupId, making, NOW)
		).rejects.toThrow();
		expect(await list(at)).not.toEqual([]);
	});

	it('two who make one at once: the second is told', async () => {
		const at = await led();
		const seen = await programmes.current(here.database, here.vault, at.coach.coachId, at.groupId);
		const make = (instead: programmes.Seen) =>
			programmes.make(
				here.database,
				here.vault,
				at.coach,
				at.groupId,
				{ words, planned: planner, instead },
				NOW
			);
		expect(await make(null)).toEqual({ kind: 'changed-meanwhile' });
		const both = await Promise.all([make(seen), make(seen)]);
		expect(both.map(({ kind }) => kind).sort()).toEqual(['changed-meanwhile', 'made']);
	});
});
