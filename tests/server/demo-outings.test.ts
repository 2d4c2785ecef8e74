import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addDays, daysBetween, localDate, type LocalDate } from '$lib/calendar/local-date.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as coaches from '$lib/server/coaches.ts';
import { demoUsers } from '$lib/server/demo/demo.ts';
import { loadDemo } from '$lib/server/demo/load.ts';
import { demoRunnerIds, type DemoPerson } from '$lib/server/demo/people.ts';
import { removeDemo } from '$lib/server/demo/remove.ts';
import * as groups from '$lib/server/groups.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as pains from '$lib/server/pains.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as roster from '$lib/server/roster.ts';
import * as walks from '$lib/server/walks.ts';
import { lanternStreet } from '$words/demo.ts';
import { planner } from '../../src/routes/coach/[group]/programme/planner.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source, but where a source is named.

const MOMENTS = [NOW, Date.UTC(2027, 5, 30, 23, 30), Date.UTC(2027, 9, 31, 0, 30)];

describe.each(DATABASES)('what the made-up group did, on %s', (type) => {
	const here = inHouse(type);

	const load = (now = NOW) => loadDemo(here, lanternStreet, now);
	const idOf = async (person: DemoPerson) => (await demoUsers(here.database)).get(person) ?? '';

	async function odile() {
		const coach = await coaches.find(here.database, await idOf('odile'));
		const [group] = coach ? await groups.list(here.database, coach.coachId) : [];
		if (!coach || !group) throw new Error('no coach');
		return { coach, group };
	}

	/** What somebody did, oldest first. */
	const done = async (person: DemoPerson) =>
		(await pastOutings.list(here.database, here.vault, await idOf(person))).reverse();

	/** The days on which somebody ran. */
	const ranOn = async (person: DemoPerson): Promise<LocalDate[]> =>
		(await done(person))
			.filter(({ started }) =>
				phasesOf(started?.outing ?? { parts: [] }).some(({ kind }) => kind === 'steady-run')
			)
			.map(({ onDate }) => onDate);

	it('is a programme of sixteen weeks, and one outing for each day that somebody was there', async () => {
		for (const now of MOMENTS) {
			await load(now);
			await isFourWeeksIn(now);
			await isWhatWasMarked(now);
			await removeDemo(here.database);
		}
	});

	/** The next outing is today or soon. */
	async function isFourWeeksIn(now: number) {
		const { coach, group } = await odile();
		const today = localDate(now, group.timeZone);
		const made = await programmes.current(here.database, here.vault, coach.coachId, group.id);
		expect(made).toMatchObject({ inputs: { weeks: 16, goal: { minutes: 30 } }, revision: 1 });
		const days = await plannedOutings.list(here.database, coach.coachId, group.id);
		expect(days.map(({ number }) => number)).toEqual(Array.from({ length: 48 }, (_, i) => i + 1));
		expect(new Set(days.map(({ week }) => week)).size).toBe(16);
		const states = days.map(({ state }) => state);
		expect(states).toEqual([...Array(12).fill('done'), ...Array(36).fill('planned')]);
		expect(days.filter(({ onDate }) => onDate < today)).toHaveLength(12);
		expect(daysBetween(today, days[12]?.onDate ?? '')).toBeLessThanOrEqual(2);
	}

	/** For Gwen none. */
	async function isWhatWasMarked(now: number) {
		const { coach, group } = await odile();
		const rows = await roster.of(here.database, here.vault, { coach, group }, now);
		const there = await attendance.list(here.database, coach.coachId, group.id);
		for (const person of demoRunnerIds) {
			const row = rows.find(({ name }) => name === lanternStreet.runners[person]);
			const days = (await done(person)).map(({ onDate }) => onDate);
			const marked = there.filter(({ name }) => name === row?.name).map(({ onDate }) => onDate);
			expect(days, person).toEqual(marked.reverse());
			expect(row?.lastOutingOn, person).toBe(days.at(-1) ?? null);
			if (person === 'gwen') expect(days).toEqual([]);
			else expect(days.length, person).toBeGreaterThanOrEqual(8);
		}
	}

	it('is the same again for the same day, but for ids that are made by chance', async () => {
		const written = async () => {
			await load();
			const all = await Promise.all(demoRunnerIds.map(done));
			await removeDemo(here.database);
			return JSON.stringify(all).replaceAll(/"plannedId":"[^"]*"/g, '');
		};
		expect(await written()).toBe(await written());
	});

	describe('keeps to what each of them may do:', () => {
		beforeAll(() => load());
		afterAll(() => removeDemo(here.database));

		it('Tobias and Dagny only walk', async () => {
			expect(await ranOn('tobias')).toEqual([]);
			expect(await ranOn('dagny')).toEqual([]);
		});

		it('Ines and Rashid run after six walks over two weeks, and no day before', async () => {
			for (const person of ['ines', 'rashid'] as const) {
				const [first = ''] = await ranOn(person);
				const walked = await walks.list(here.database, await idOf(person));
				const before = walked.filter((on) => on < first);
				expect(before.length, person).toBeGreaterThanOrEqual(6);
				expect(daysBetween(before.at(-1) ?? '', first), person).toBeGreaterThanOrEqual(14);
			}
		});

		it('Rashid has no pulse anywhere, and the others none that a heart could not have', async () => {
			expect(JSON.stringify(await done('rashid'))).not.toMatch(/bpm|chest-strap|counted|tapped/i);
			// Tanaka 2001: 208 minus 0.7 times age.
			const limits = { ines: [70, 176], 'mei-lin': [63, 188], pavel: [60, 183], tobias: [74, 164] };
			for (const [person, [low = 0, high = 0]] of Object.entries(limits)) {
				const told = JSON.stringify(await done(person as DemoPerson));
				const beats = [...told.matchAll(/"(?:bpm|meanBpm|highestBpm)":(\d+)/g)].map(([, n]) =>
					Number(n)
				);
				expect(beats.length, person).toBeGreaterThan(10);
				expect(Math.min(...beats), person).toBeGreaterThan(low);
				expect(Math.max(...beats), person).toBeLessThan(high);
			}
		});

		it('Pavel walked while his shin hurt, and runs again', async () => {
			const outings = await done('pavel');
			const sore = outings.find(({ painNextMorning }) => painNextMorning?.level === 'new');
			const ran = await ranOn('pavel');
			const after = outings.filter(({ onDate }) => onDate > (sore?.onDate ?? ''));
			expect(ran).toContain(sore?.onDate);
			expect(after.map(({ onDate }) => ran.includes(onDate))).toEqual([false, true]);
			const stands = await pains.standsForMany(here.database, [await idOf('pavel')]);
			expect(stands(await idOf('pavel'))).toBe(false);
		});

		it('Mei-Lin went too fast until her band was set, and talks since', async () => {
			const told = (await done('mei-lin')).flatMap(({ onDate, answers }) =>
				answers.map(({ talk }) => ({ onDate, talk }))
			);
			const hard = told.filter(({ talk }) => talk !== 'comfortable').map(({ onDate }) => onDate);
			expect(new Set(hard).size).toBe(2);
			const setOn = addDays(localDate(NOW, 'Europe/Dublin'), -8);
			expect(hard.every((on) => on <= setOn)).toBe(true);
		});

		it('a day keeps its outing and its name when the days are worked out again', async () => {
			const { coach, group } = await odile();
			const made = await programmes.current(here.database, here.vault, coach.coachId, group.id);
			if (!made) throw new Error('no programme');
			const days = await plannedOutings.list(here.database, coach.coachId, group.id);
			const today = localDate(NOW, group.timeZone);
			const again = planner({ ...made, inputs: made.inputs! }, days, today);
			const asItIs = days.filter(({ state }) => state === 'planned');
			expect(again?.map(({ onDate, outing }) => [onDate, outing])).toEqual(
				asItIs.map(({ onDate, outing }) => [onDate, outing])
			);
		});

		it('beside the programme there is a library of two outings', async () => {
			const { coach, group } = await odile();
			const plans = await outingPlans.list(here.database, { coach, groupId: group.id });
			expect(plans.map(({ outing }) => outing.name).sort()).toEqual(
				[lanternStreet.library.withRuns, lanternStreet.library.walking].sort()
			);
		});
	});
});
