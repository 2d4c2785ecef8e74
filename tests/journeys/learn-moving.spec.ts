import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

async function answer(page: Page, talk: string, effort: string) {
	await page.getByRole('radio', { name: talk }).check();
	await page.getByLabel('How did it feel?').selectOption(effort);
	await Promise.all([
		page.waitForEvent('load'),
		page.getByRole('button', { name: 'That was it' }).click()
	]);
	await ready(page);
}

const open = async (page: Page) => {
	await page.goto('/learn/edge');
	await ready(page);
};

test('from comfortable to with breaths, and then back one step', async ({ page, phone }) => {
	await phone.screen();
	await phone.measureResting(68, todayIn('UTC'));
	await open(page);
	// Age 34: 208 - 0.7 x 34 = 184.2 (Tanaka 2001); 62 % of the reserve over 68 is 140.04 (Karvonen 1957).
	await expect(page.getByText('If your pulse is over 140')).toContainText('35 beats in 15 seconds');
	await expect(page.getByRole('heading', { name: 'Stretch 1 of 4' })).toBeVisible();
	await answer(page, 'Comfortable', '3');
	await expect(page.getByRole('heading', { name: 'Stretch 2 of 4' })).toBeVisible();
	await answer(page, 'With breaths', '6');
	await expect(page.getByRole('heading', { level: 2 })).toHaveText('That is the edge, for today');
	await expect(page.getByText('Go back one step')).toBeVisible();
	await expect(page.getByRole('button', { name: 'That was it' })).toHaveCount(0);
});

test('broken off talk, or a 7, ends it at once', async ({ page, phone }) => {
	await phone.screen();
	await open(page);
	await answer(page, 'Broke off', '8');
	await expect(page.getByRole('heading', { level: 2 })).toHaveText('Walk now, slowly');
	await page.getByRole('link', { name: 'Begin again' }).click();
	await ready(page);
	await answer(page, 'Comfortable', '3');
	await answer(page, 'Comfortable', '7');
	await expect(page.getByRole('heading', { level: 2 })).toHaveText('That is enough, for today');
});

for (const who of ['settlingIn', 'mayWalk'] as const) {
	test(`${who}: comfortable only, and no run in it`, async ({ page, phone }) => {
		await phone.screen(leadsTo[who]);
		await open(page);
		await expect(page.getByText('asks you to stay comfortable')).toBeVisible();
		for (let stretch = 1; stretch <= 4; stretch++) {
			await expect(page.getByText(/\brun\b(?!ning)/i)).toHaveCount(stretch === 1 ? 1 : 0);
			await answer(page, 'Comfortable', '4');
		}
		await expect(page.getByRole('heading', { level: 2 })).toHaveText(
			'You were comfortable all the way'
		);
	});

	test(`${who}: an effort of 5 is as high as it goes, and 6 is eased`, async ({ page, phone }) => {
		await phone.screen(leadsTo[who]);
		await open(page);
		await answer(page, 'Comfortable', '4');
		await answer(page, 'Comfortable', '5');
		await expect(page.getByRole('status')).toContainText('Stay at this one.');
		await expect(page.getByRole('button', { name: 'That was it' })).toHaveCount(0);
		await open(page);
		await answer(page, 'Comfortable', '4');
		await answer(page, 'Comfortable', '6');
		await expect(page.getByRole('status')).toContainText('comfortable ends there');
		await expect(page.getByRole('status')).toContainText('Go back one step');
	});
}

test('what is missing is said at its field, and what was chosen stays', async ({ page, phone }) => {
	await phone.screen();
	await open(page);
	await answer(page, 'Comfortable', '3');
	await page.getByRole('radio', { name: 'Comfortable' }).check();
	await page.getByRole('button', { name: 'That was it' }).click();
	await expect(page.getByRole('alert')).toContainText('Choose a number from 0 to 10.');
	await expect(page.getByRole('heading', { name: 'Stretch 2 of 4' })).toBeVisible();
	await expect(page.getByRole('radio', { name: 'Comfortable' })).toBeChecked();
	for (const stretch of ['-1', '99', 'x', '']) {
		const sent = await phone.send('/learn/edge?/answer', {
			stretch,
			talk: 'comfortable',
			effort: 3
		});
		expect(sent.status(), stretch).toBe(400);
	}
});

test('the clock says when to speak and when to stop', async ({ page, phone }) => {
	await phone.screen();
	await page.clock.install();
	await open(page);
	await page.getByRole('button', { name: 'Start the stretch' }).click();
	const said = page.locator('.said');
	await page.clock.runFor(60_000);
	await expect(page.getByRole('timer')).toHaveText('1:30 left');
	await expect(said).toBeEmpty();
	await page.clock.runFor(61_000);
	await expect(said).toHaveText('Speak aloud now.');
	await page.clock.runFor(30_000);
	await expect(said).toHaveText('Ease to a slow walk, and answer.');
});

test('one breath: the share, the range, and a count that cannot be', async ({ page, phone }) => {
	await phone.screen();
	await page.goto('/learn/one-breath/moving');
	const count = async (rest: string, moving: string) => {
		await page.getByLabel('Count at rest').fill(rest);
		await page.getByLabel('Count while moving').fill(moving);
		await page.getByRole('button', { name: 'See my share' }).click();
	};
	await count('20', '9');
	// 9 of 20 is 45 %; 40 to 50 % for counts under 25 (Loose 2012).
	await expect(page.getByRole('status')).toContainText('45 %');
	await expect(page.getByRole('status')).toContainText('the range is 8 to 10');
	await count('20', '5');
	await expect(page.getByRole('status')).toContainText('Ease off.');
	await count('20', '21');
	await expect(page.getByRole('alert')).toContainText('That is further than at rest');
	await count('two', '');
	await expect(page.getByRole('alert')).toContainText('Type a number, such as 12.');
	await expect(page.getByLabel('Count at rest')).toHaveValue('two');
	await phone.screen(leadsTo.settlingIn);
	await page.goto('/learn/one-breath/moving');
	await count('20', '9');
	await expect(page.getByRole('status')).toContainText('10 or more');
	await expect(page.getByRole('status')).toContainText('Ease off.');
});

const lessons = [
	'The talk test while you walk',
	'Find the edge',
	'Guess, then look',
	'One breath while you move'
];
for (const lesson of lessons) {
	test(`who has to ask first is led from “${lesson}” to the result`, async ({ page, phone }) => {
		await phone.screen(leadsTo.askFirst);
		await page.goto('/learn');
		await page.getByRole('link', { name: lesson }).click();
		await expect(page).toHaveURL(/\/screening\/result$/);
	});
}

for (const [who, withBreaths] of [
	['mayWalk', 'Ease off now'],
	['settlingIn', 'Ease off now'],
	['mayRun', 'In an outing it is fine in the last third of a run']
] as const) {
	test(`the talk test while walking, ${who}: what with breaths asks`, async ({ page, phone }) => {
		await phone.screen(who === 'mayRun' ? undefined : leadsTo[who]);
		await page.goto('/learn/talk/moving');
		await expect(page.getByText(withBreaths)).toBeVisible();
	});
}
