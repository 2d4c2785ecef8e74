import AxeBuilder from '@axe-core/playwright';
import type { KeptForRunner } from '../../src/lib/outing/kept.ts';
import { phasesOf, type Outing } from '../../src/lib/outing/outing.ts';
import { plusDays, todayIn, written } from './days.ts';
import { become, expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

const runsOf = (outing: Outing) =>
	phasesOf(outing)
		.filter(({ kind }) => kind === 'steady-run')
		.map(({ seconds }) => seconds);

test('whoever joins late and settled in begins with short runs, in every way to an outing', async ({
	page,
	lantern,
	stranger,
	house
}) => {
	test.slow();
	const late = await lantern.join(await stranger(), 'Ines', leadsTo.settlingIn);
	for (const daysAhead of [0, 3, 6, 8, 11, 14]) {
		await house.reopen({ daysAhead });
		await late.lead('/bands?/walked');
	}
	const plan = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	const day = plusDays(todayIn('Europe/Dublin'), 15);
	await lantern.coach.lead(`${plan}?/plan`, { onDate: day });
	const made = await late.lead('/outings?/make');

	const kept = async () =>
		(await (await late.get('/prompter/kept')).json()) as KeptForRunner<unknown>;
	const { outings, own, usual, longestRunSeconds } = await kept();
	expect(longestRunSeconds).toBe(30);
	// The group runs 30, 40, 50, 40 and 30 s.
	for (const { outing, walksInstead } of [
		...outings,
		...own,
		{ outing: usual, walksInstead: false }
	]) {
		expect(walksInstead).toBe(false);
		expect(runsOf(outing).length).toBeGreaterThan(0);
		expect(Math.max(...runsOf(outing))).toBeLessThanOrEqual(30);
	}
	expect(outings[0]?.shortenedToSeconds).toBe(30);

	await become(page, late);
	await page.goto('/bands');
	await expect(page.getByText('Runs last 30 s at most for now')).toBeVisible();
	await page.goto('/outings');
	await expect(page.getByText('For you, runs last 30 s at most for now.')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.goto(made);
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByText('your runs last 30 s at most for now')).toBeVisible();
	await page.getByLabel('How long').nth(1).fill('0:50');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(
		page.getByText('This run is longer than yours may be for now').first()
	).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	const forged = await late.send(`${made}?/save`, {
		name: 'Run',
		revision: '1',
		'parts-0-kind': 'steady-run',
		'parts-0-seconds': '2:00'
	});
	expect(forged.status()).toBe(400);
	expect(await forged.text()).toContain('This run is longer than yours may be for now');

	await become(page, lantern.coach);
	await page.goto(lantern.path);
	await expect(page.getByRole('row', { name: 'Ines' })).toContainText(
		'runs of 30 s at most for now'
	);

	await house.reopen({ daysAhead: 21 });
	expect((await kept()).outings).toEqual([]);
	await become(page, late);
	await page.goto('/bands');
	await expect(page.getByText('Runs last 45 s at most for now')).toBeVisible();
	// Growing on by half a week, and no jump after some weeks.
	await house.reopen({ daysAhead: 56 });
	await page.goto('/bands');
	await expect(page.getByText('Runs last 5 min 40 s at most for now')).toBeVisible();
	await house.reopen({ daysAhead: 126 });
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await expect(page.getByText('at most for now')).toHaveCount(0);
});

test('a runner sees what the group has set, and makes outings of their own', async ({
	page,
	lantern,
	stranger
}) => {
	const plan = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await lantern.coach.lead(`${plan}?/plan`, { onDate: todayIn('Europe/Dublin') });
	const walker = await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await become(page, walker);
	await page.goto('/bands');
	await page.getByRole('link', { name: 'My outings' }).click();
	await expect(page.getByText('Outing 1, Lantern Street beginners')).toBeVisible();
	await expect(page.getByText('each run is a brisk walk')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.getByRole('button', { name: 'Make an outing' }).click();
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByRole('button', { name: 'Steady run' })).toBeHidden();
	await page.getByLabel('How long').nth(1).fill('12:00');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('status').filter({ hasText: 'Kept.' })).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	// A run is refused also where a form is forged.
	const path = new URL(page.url()).pathname;
	const forged = await walker.send(`${path}?/save`, {
		name: 'Run',
		revision: '2',
		'parts-0-kind': 'steady-run',
		'parts-0-seconds': '2:00'
	});
	expect(forged.status()).toBe(400);
	expect(await forged.text()).toContain('Your result opens walking for now');
	const other = await lantern.join(await stranger(), 'Mei-Lin');
	expect((await other.get(path)).status()).toBe(404);
});

test('what moved is told plainly: a day that fell out, a week that comes again, days off', async ({
	page,
	lantern,
	stranger,
	house
}) => {
	const runner = await lantern.join(await stranger(), 'Ines');
	const day = (nth: number) => plusDays(todayIn('Europe/Dublin'), nth);
	const weekdayOf = (on: string) => `${new Date(`${on}T00:00Z`).getUTCDay() || 7}`;
	await lantern.coach.lead(`${lantern.path}/programme/new?/keep`, {
		weeks: '16',
		outingsAWeek: '2',
		firstRun: '0:40',
		goalKind: 'minutes',
		goalMinutes: '20',
		startsOn: day(0),
		weekdays: [weekdayOf(day(0)), weekdayOf(day(3))]
	});
	await house.reopen({ daysAhead: 4 });
	const path = `${lantern.path}/programme`;
	const calendar = await (await lantern.coach.get(path)).text();
	const ids = [...calendar.matchAll(/id="d-([\w-]+)"/g)].map(([, id]) => id ?? '').slice(0, 2);
	for (const id of ids) {
		await lantern.coach.lead(`${path}?/say`, { id, was: 'planned', state: 'missed' });
	}
	const off = { from: day(10), until: day(10), revision: 1 };
	await lantern.coach.lead(`${path}?/takeOff`, off);

	await become(page, runner);
	await page.setViewportSize({ width: 360, height: 780 });
	await page.goto('/outings');
	await expect(
		page.getByText(`The outing of ${written(day(3))} did not take place.`)
	).toBeVisible();
	await expect(page.getByText(`Week 1 comes once more, from ${written(day(7))}.`)).toBeVisible();
	await expect(page.getByText(`No outing on ${written(day(10))}.`)).toBeVisible();
	await expect(page.getByText('Nothing has to be made up for.')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
