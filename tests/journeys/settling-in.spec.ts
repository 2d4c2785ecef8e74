import { plusDays, todayIn, written, ZONE } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

/*
 * Whoever is new to exercise or has a condition walks first: at least six outings over at least two
 * weeks. Our own careful choice; guidelines ask for light to moderate effort first (ACSM 2015).
 */

test.use({ timezoneId: ZONE });

test.beforeEach(async ({ page, phone }) => {
	await page.goto('/screening');
	await ready(page);
	await phone.screen(leadsTo.settlingIn);
});

test('new to exercise: may run, and begins with walking, with no run on the page or in its data', async ({
	page,
	phone
}) => {
	await page.goto('/screening/result');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you begin by walking'
	);
	await expect(page.locator('h1 + p')).toContainText('at least six walks over at least two weeks');
	await expect(page.getByText('You are new to regular exercise.')).toBeVisible();
	await page.goto('/bands');
	await expect(page.getByText('You are settling in.')).toBeVisible();
	await expect(page.getByText('at least 6 walks, and at least 14 days')).toBeVisible();
	await expect(page.getByText('The first short runs can come on')).toHaveCount(0);
	await expect(page.getByRole('heading', { name: 'Brisk walk' })).toBeVisible();
	await expect(page.getByText('Steady run')).toHaveCount(0);
	expect(await (await phone.get('/bands/__data.json')).text()).not.toContain('steady-run');
});

test('the first walk says until when, and a walk that was not one is taken back', async ({
	page
}) => {
	await page.goto('/bands');
	await page.getByRole('button', { name: 'I walked an outing today' }).click();
	await expect(page.getByText('at least 5 walks, and at least 14 days')).toBeVisible();
	await expect(page.getByText('The first short runs can come on')).toContainText(
		written(plusDays(todayIn(), 14))
	);
	await expect(page.getByRole('button', { name: 'I walked an outing today' })).toHaveCount(0);
	await page.getByText('One walk so far').click();
	await page.getByRole('button', { name: /^Take back the walk of/ }).click();
	await expect(page.getByText('at least 6 walks, and at least 14 days')).toBeVisible();
});

test('six walks in a week are not enough, nor are five in two; six in two weeks are', async ({
	page,
	phone,
	house
}) => {
	const walked = () => phone.lead('/bands?/walked');
	const settling = page.getByText('You are settling in.');
	const run = page.getByRole('heading', { name: 'Steady run' });
	await walked();
	await walked();
	for (const daysAhead of [1, 3, 5, 6]) {
		await house.reopen({ daysAhead });
		await walked();
	}
	await house.reopen({ daysAhead: 14 });
	await page.goto('/bands');
	await expect(page.getByText('at least 1 walk, and at least 0 days')).toBeVisible();
	await expect(run).toHaveCount(0);
	await walked();
	await page.goto('/bands');
	await expect(settling).toHaveCount(0);
	await expect(run).toBeVisible();
	expect(await phone.result(), 'it is done').toBe('From what you told us, you may run');

	await house.reopen({ daysAhead: 13 });
	await page.goto('/bands');
	await expect(settling, 'thirteen days are not fourteen').toBeVisible();
	await expect(run).toHaveCount(0);
});
