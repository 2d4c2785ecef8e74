import { aYearAfter, daysBetween, plusDays, todayIn, written, ZONE } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, measureResting, ready } from './walk.ts';

test.use({ timezoneId: ZONE });

test.beforeEach(async ({ page }) => {
	// The page tells the server in which zone the runner is.
	await page.goto('/screening');
	await ready(page);
});

test('a result counts for twelve calendar months, by the calendar where the runner is', async ({
	page,
	phone,
	house
}) => {
	const today = todayIn();
	const lastDay = plusDays(aYearAfter(today), -1);
	await phone.screen();
	await measureResting(page, 68);
	await page.goto('/screening/result');
	await expect(page.getByText(`This counts until ${written(lastDay)}`)).toBeVisible();

	await house.reopen({ daysAhead: daysBetween(today, lastDay) });
	await page.goto('/bands');
	await expect(page.getByRole('region', { name: 'Steady run' })).toContainText('126–140');

	await house.reopen({ daysAhead: daysBetween(today, lastDay) + 1 });
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Please answer again');
	await expect(page.getByText('A result counts for twelve months.')).toBeVisible();
	await page.getByRole('link', { name: 'Answer again' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await ready(page);
	await expect(page.locator(':checked')).toHaveCount(0);
});

test('a page with bands that was left open over the last midnight is shut when it is asked again', async ({
	page,
	phone,
	house
}) => {
	const today = todayIn();
	await phone.screen();
	await page.goto('/bands');
	await ready(page);
	await house.reopen({ daysAhead: daysBetween(today, aYearAfter(today)) });
	await page.getByRole('link', { name: 'About you and units' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Please answer again');
});

test('a clock that was set back closes a result that it has not reached yet', async ({
	page,
	phone,
	house
}) => {
	await phone.screen();
	await house.reopen({ daysAhead: -2 });
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
});

test('a looser result within a day asks what changed, once; after a day it does not', async ({
	page,
	phone,
	house
}) => {
	await phone.screen(leadsTo.askFirst);
	await house.reopen({ minutesAhead: 23 * 60 });
	expect(await phone.screen()).toBe('/screening/changed');
	expect(await phone.result(), 'until then nothing is open').toBe('Please answer again');
	await page.goto('/screening/changed');
	await expect(page.getByText('your answers gave a stricter result')).toBeVisible();
	await page.getByRole('button', { name: 'Go on to my result' }).click();
	await expect(page.locator('#why-issue')).toHaveText('Pick what changed.');
	await page.getByLabel('I made a mistake the first time').check();
	await page.getByRole('button', { name: 'Go on to my result' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you may run'
	);
	await page.goto('/account');
	await page.getByText('What happened, and when').click();
	await expect(page.getByText('You said why a looser result came within a day')).toHaveCount(1);
});

test('25 hours later a looser result asks nothing, and a stricter one never does', async ({
	phone,
	house
}) => {
	await phone.screen();
	expect(await phone.screen(leadsTo.askFirst)).toBe('/screening/result');
	expect(await phone.result()).toBe('Ask first');
	await house.reopen({ minutesAhead: 25 * 60 });
	expect(await phone.screen()).toBe('/screening/result');
	expect(await phone.result()).toBe('From what you told us, you may run');
});
