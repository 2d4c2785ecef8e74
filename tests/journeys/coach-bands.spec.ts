import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { todayIn, written } from './days.ts';
import { become, expect, LanternStreet, test } from './lantern-street.ts';
import { leadsTo, ready } from './walk.ts';

// Our own rules, no source. Beats: rest 68, maximum 208 - 0.7 x age (Tanaka 2001), shares of the
// reserve between them (Karvonen 1957).

test.describe.configure({ timeout: 120_000 });

const part = (page: Page, name: string) => page.getByRole('region', { name });
const today = () => written(todayIn('Europe/Dublin'));

async function noFaults(page: Page) {
	const { violations } = await new AxeBuilder({ page }).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}

test('a coach moves a band; the runner reads who did and why, and says that it feels wrong', async ({
	page,
	lantern,
	stranger
}) => {
	// Age 42: maximum 178.6, reserve 110.6. 50 to 62 % is 123 to 137, 45 to 55 % is 118 to 129.
	const ines = await lantern.join(await stranger(), 'Ines', { 'age.years': 42 });
	await page.goto(lantern.bandsOf('Ines'));
	await ready(page);
	const run = part(page, 'Steady run');
	await expect(run).toContainText('123–137');
	await expect(run).toContainText('Usual band');
	await noFaults(page);

	// Beats of the band that counts are the same everywhere; of one that is tried they are rough.
	await expect(run.locator('output')).toHaveText('123–137');
	await expect(run).not.toContainText('To the nearest five');
	await run.getByLabel('From, % reserve').fill('45');
	await run.getByLabel('To, % reserve').fill('55');
	await expect(run.locator('output')).toHaveText('about 120–130');
	await expect(run).toContainText('To the nearest five, until you set it.');
	await run.getByLabel('To, % reserve').fill('46');
	await expect(run.locator('output')).toHaveText('no band yet');
	await run.getByLabel('To, % reserve').fill('55');
	await run.getByText('Notes').click();
	await run.getByLabel('Note to the runner').fill('A little gentler after your cold.');
	await run.getByLabel('Note for the coaches').fill('Look again in two weeks.');
	await run.getByRole('button', { name: 'Set this band' }).click();
	await expect(run).toContainText(`Set for this runner on ${today()}`);
	await expect(run.locator('output')).toHaveText('118–129');
	await expect(run.locator('.now')).toContainText('118–129');
	const history = page.getByRole('table', { name: 'Newest first' });
	await expect(history).toContainText('45–55 % of reserve, feels 5–6 of 10');
	await expect(history).toContainText('Odile Marr');

	await become(page, ines);
	await page.goto('/bands');
	await ready(page);
	await expect(run).toContainText('118–129');
	await expect(run).toContainText(`Set with your coach on ${today()}`);
	await expect(run).toContainText('A little gentler after your cold.');
	await expect(page.getByText('Look again in two weeks.')).toHaveCount(0);
	// The maximum ten beats off moves the band that counts, not the usual one.
	await expect(page.getByRole('table', { name: /if the maximum is off/ })).toContainText('118–129');
	await run.getByText('This feels wrong').click();
	await run.getByLabel('Too easy').check();
	await run.getByRole('button', { name: 'Tell my coach' }).click();
	await expect(run).toContainText(`You told your coach on ${today()}: too easy. Not seen yet.`);
	await noFaults(page);

	await become(page, lantern.coach);
	await page.goto(`${lantern.path}/bands`);
	await expect(page.getByRole('row', { name: /Ines/ })).toContainText('feels too easy');
	await page.goto(lantern.bandsOf('Ines'));
	await expect(page.getByText('feels too easy')).toBeVisible();
	await page.getByRole('button', { name: 'I have seen it' }).click();
	await expect(page.getByText(`seen on ${today()}`)).toBeVisible();
	await become(page, ines);
	await page.goto('/bands');
	await expect(run).toContainText(`Seen on ${today()}.`);
});

test('one tap brings back what was before, and history keeps all of it', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Ines');
	const set = (low: number, high: number) =>
		lantern.coach.lead(`${lantern.bandsOf('Ines')}?/set`, {
			phase: 'steady-run',
			lowPercent: low,
			highPercent: high,
			effortLow: 5,
			effortHigh: 6,
			runnerNote: '',
			innerNote: ''
		});
	await set(45, 55);
	await set(50, 65);
	await page.goto(lantern.bandsOf('Ines'));
	const run = part(page, 'Steady run');
	await expect(run).toContainText('50–65 % of reserve');
	await run.getByRole('button', { name: /Back to 45–55 % of reserve/ }).click();
	await expect(run).toContainText('45–55 % of reserve');
	await run.getByRole('button', { name: 'Use the group band again' }).click();
	await expect(run).toContainText('Usual band');
	await expect(page.getByRole('table', { name: 'Newest first' }).getByRole('row')).toHaveCount(5);
});

test('a band ends where the result ends, and the form says why', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await page.goto(lantern.bandsOf('Tobias'));
	await ready(page);
	await expect(page.getByRole('heading', { name: 'Steady run' })).toHaveCount(0);
	const walk = part(page, 'Warm-up walk');
	// The hand pulls the edge further than it goes: it stays, and says why.
	const ends = walk.locator('.ends');
	await expect(ends).toContainText('drag the edges');
	await walk.locator('input[type=range]').last().fill('90');
	await expect(walk.locator('input[type=range]').last()).toHaveValue('50');
	await expect(walk.getByLabel('To, % reserve')).toHaveValue('50');
	await expect(ends).toContainText('Ends at 50 %: more would be another part of the outing.');
	await walk.locator('input[type=range]').last().fill('45');
	await expect(ends).toContainText('drag the edges');
	await expect(walk).toContainText('Ends at 50 %: more would be another part of the outing.');
	await walk.getByLabel('To, % reserve').fill('60');
	await walk.getByLabel('Feels, to').fill('8');
	await walk.getByRole('button', { name: 'Set this band' }).click();
	const summary = page.getByRole('alert');
	await expect(summary).toContainText('Ends at 50 %');
	await expect(summary).toContainText('Ends at 5');
	// What was typed is still there, and nothing was set.
	await expect(walk.getByLabel('To, % reserve')).toHaveValue('60');
	await expect(page.getByText('Nothing was set yet.')).toBeVisible();
	// A run is not there to be set for somebody who may walk.
	const sent = { lowPercent: 45, highPercent: 55, effortLow: 4, effortHigh: 5 };
	const refused = await lantern.coach.send(`${lantern.bandsOf('Tobias')}?/set`, {
		phase: 'steady-run',
		...sent
	});
	expect(refused.status()).toBe(404);
});

test('by talk there is no beat and no share of a reserve, only how it should feel', async ({
	page,
	lantern,
	stranger
}) => {
	const rashid = await lantern.join(await stranger(), 'Rashid', leadsTo.byTalk);
	await page.goto(lantern.bandsOf('Rashid'));
	await ready(page);
	await expect(page.getByText('This runner goes by talk.')).toBeVisible();
	await expect(page.locator('main')).not.toContainText(/bpm|beats a minute \d|% of reserve/);
	await expect(page.locator('main svg, main output')).toHaveCount(0);
	const run = part(page, 'Steady run');
	await run.getByLabel('Feels, from').fill('4');
	await run.getByLabel('Feels, to').fill('5');
	await run.getByRole('button', { name: 'Set this band' }).click();
	await expect(run).toContainText('feels 4–5 of 10');
	await become(page, rashid);
	await page.goto('/bands');
	await expect(run).toContainText('4–5');
	await expect(page.locator('main')).not.toContainText('bpm');
});

test('not today is a grey row without a number, whatever closed it', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	await lantern.join(await stranger(), 'Pavel', leadsTo.notToday);
	await page.goto(`${lantern.path}/bands`);
	for (const name of ['Gwen', 'Pavel']) {
		const row = page.getByRole('row', { name: new RegExp(name) });
		await expect(row).toHaveText(new RegExp(`^\\s*${name}\\s*not today\\s*$`));
		await row.getByRole('link', { name }).click();
		await expect(page.getByText('No bands now.')).toBeVisible();
		await expect(page.locator('main form')).toHaveCount(0);
		expect(await page.locator('main').innerText()).not.toMatch(/\d/);
		const sent = { phase: 'warm-up-walk', effortLow: 2, effortHigh: 3 };
		const band = { ...sent, lowPercent: 30, highPercent: 40 };
		expect((await lantern.coach.send(`${lantern.bandsOf(name)}?/set`, band)).status()).toBe(404);
		await page.goto(`${lantern.path}/bands`);
	}
});

test('the group’s band counts for everybody without one of their own, side by side by name', async ({
	page,
	lantern,
	stranger
}) => {
	// Age 34: maximum 184.2, reserve 116.2. 40 to 50 % is 114 to 126, 45 to 55 % is 120 to 132.
	const rashid = await lantern.join(await stranger(), 'Rashid');
	await lantern.join(await stranger(), 'Ines');
	await lantern.join(await stranger(), 'Dagny', leadsTo.settlingIn);
	await page.goto(`${lantern.path}/bands?part=steady-run`);
	await ready(page);
	await noFaults(page);
	const table = page.getByRole('table', { name: /Steady run: everybody/ });
	await expect(table.getByRole('rowheader')).toHaveText(['Dagny', 'Ines', 'Rashid']);
	await expect(table.getByRole('row', { name: /Ines/ }).getByRole('img')).toHaveAccessibleName(
		/Steady run: 126 to 140 beats a minute, give or take 7/
	);
	await expect(table.getByRole('row', { name: /Dagny/ })).toContainText('brisk walk instead');

	await lantern.coach.lead(`${lantern.bandsOf('Ines')}?/set`, {
		phase: 'steady-run',
		lowPercent: 45,
		highPercent: 55,
		effortLow: 4,
		effortHigh: 5
	});
	await page.getByLabel('From, % reserve').fill('40');
	await page.getByLabel('To, % reserve').fill('50');
	await page.getByRole('button', { name: 'Set this band' }).click();
	await expect(table.getByRole('row', { name: /Rashid/ })).toContainText(/114–126.*group,/s);
	await expect(table.getByRole('row', { name: /Ines/ })).toContainText(/120–132.*own,/s);
	await become(page, rashid);
	await page.goto('/bands');
	await expect(part(page, 'Steady run')).toContainText('Set for your whole group');
});

test('a coach confirms advice, sees never why, and is named to the runner', async ({
	page,
	lantern,
	stranger
}) => {
	const tobias = await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await page.goto(lantern.bandsOf('Tobias'));
	await expect(page.getByText('No advice is written down.')).toBeVisible();
	await tobias.lead('/screening/advice?/record', {
		givenOn: todayIn('UTC'),
		role: 'exercise-professional',
		covers: 'R-AGE-45',
		scope: 'walkrun',
		limitBpm: ''
	});
	await page.goto(lantern.bandsOf('Tobias'));
	const advice = part(page, 'Advice');
	await expect(advice).toContainText('Walking and easy running.');
	await expect(advice).not.toContainText(/45|professional/i);
	await expect(advice).toContainText('confirmed by Odile Marr, Run leader, level 2');
	await advice.getByRole('button', { name: 'Confirm this advice' }).click();
	await expect(advice.getByText(/^Confirmed by Odile Marr/)).toBeVisible();
	await become(page, tobias);
	// Where it is used: on the result that it opened, and where advice is written down.
	for (const path of ['/screening/result', '/screening/advice']) {
		await page.goto(path);
		await expect(
			page.getByText(`Confirmed by Odile Marr, Run leader, level 2, on ${today()}.`)
		).toBeVisible();
	}
});

test('whoever may talk an age rule over with a coach reads the qualification, or that there is none', async ({
	page,
	lantern,
	stranger
}) => {
	const tobias = await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	const ines = await lantern.join(await stranger(), 'Ines', leadsTo.askFirst);
	for (const path of ['/screening/result', '/screening/advice']) {
		const asked = await (await tobias.get(path)).text();
		expect(asked, path).toContain('Odile Marr: Run leader, level 2.');
		// A sign of illness is a doctor's alone.
		expect(await (await ines.get(path)).text(), path).not.toContain('Run leader');
	}
	const about = { name: 'Odile Marr', qualification: '' };
	await lantern.coach.send('/coach/account?/about', about);
	await tobias.lead('/screening/advice?/record', {
		givenOn: todayIn('UTC'),
		role: 'exercise-professional',
		covers: 'R-AGE-45',
		scope: 'walkrun',
		limitBpm: ''
	});
	await become(page, tobias);
	await page.goto('/screening/result');
	await expect(page.getByText('No coach has confirmed this advice.')).toBeVisible();
	await page.goto('/screening/advice');
	await expect(page.getByText('Odile Marr: no qualification given.')).toBeVisible();
	await become(page, lantern.coach);
	await page.goto(lantern.bandsOf('Tobias'));
	const advice = part(page, 'Advice');
	await expect(advice.getByRole('link', { name: 'Write down your qualification' })).toBeVisible();
	await advice.getByRole('button', { name: 'Confirm this advice' }).click();
	await become(page, tobias);
	for (const path of ['/screening/result', '/screening/advice']) {
		await page.goto(path);
		await expect(
			page.getByText(/^Confirmed by Odile Marr, no qualification given, on/)
		).toBeVisible();
	}
});

test('the desk is not there for a runner, nor a runner who is in another group', async ({
	lantern,
	stranger
}) => {
	const ines = await lantern.join(await stranger(), 'Ines');
	const answer = await ines.get(lantern.bandsOf('Ines'));
	expect(answer.status()).toBe(303);
	expect(answer.headers().location).toBe('/coach/sign-in');
	expect((await ines.send(`${lantern.bandsOf('Ines')}?/set`)).status()).toBe(403);
	const unknown = lantern.bandsOf('Ines').replace(/members\/[\w-]+/, 'members/no-such-member');
	expect((await lantern.coach.get(unknown)).status()).toBe(404);
});

test('a group that counts in miles reads miles an hour, side by side and for one runner', async ({
	page,
	lantern,
	stranger
}) => {
	const miles = { name: 'Quay Street', units: 'mph', paceUnits: 'min/mile' };
	const quay = await LanternStreet.found(lantern.coach, miles);
	await quay.join(await stranger(), 'Rashid');
	await become(page, quay.coach);
	for (const path of [`${quay.path}/bands`, quay.bandsOf('Rashid')]) {
		await page.goto(path);
		await expect(page.locator('main'), path).toContainText('mph');
		await expect(page.locator('main'), path).not.toContainText('km/h');
	}
});
