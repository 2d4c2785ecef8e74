import type { Page } from '@playwright/test';
import { rowsOf, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

const NUMBERS = ['112', '999', '911', '000', '111'];

async function expectNumbers(page: Page) {
	for (const number of NUMBERS) {
		const link = page.locator('main').getByRole('link', { name: number, exact: true });
		await expect(link).toBeVisible();
		await expect(link).toHaveAttribute('href', `tel:${number}`);
	}
}

test('a sign ticked by nobody shows the numbers at once, and stores nothing at all', async ({
	page,
	house,
	context
}) => {
	const counts = () => tablesOf(house).map((table) => [table, rowsOf(house, table).length]);
	const before = counts();
	await page.goto('/screening');
	await ready(page);
	await expect(page.getByText('Call the emergency number where you are')).toBeHidden();
	await page.getByRole('checkbox').first().check();
	await expect(page.getByRole('heading', { name: 'Get help now' })).toBeVisible();
	await expectNumbers(page);
	await expect(page.getByRole('status')).toContainText('Call the emergency number where you are');

	await page.getByRole('button', { name: 'Go on' }).click();
	await expect(page).toHaveURL(/\/screening\/emergency$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Get help now');
	await expectNumbers(page);
	await expect(page.getByText('Do not drive yourself.')).toBeVisible();
	await expect(page.getByText('We have not stored anything.')).toBeVisible();
	expect(counts()).toEqual(before);
	expect((await context.cookies()).map(({ name }) => name)).toEqual(['time_zone']);
});

test('a sign counts also beside "none of these", and the way to the questions stays shut', async ({
	page,
	phone,
	house
}) => {
	const before = rowsOf(house, 'user').length;
	expect(await phone.lead('/screening?/answer', { urgent: ['stroke', 'none'] })).toBe(
		'/screening/emergency'
	);
	await page.goto('/screening/consent');
	await expect(page).toHaveURL(/\/screening$/);
	expect(rowsOf(house, 'user')).toHaveLength(before);
});

test('"none of these" of before is forgotten once a sign is ticked', async ({ phone }) => {
	expect(await phone.lead('/screening?/answer', { urgent: 'none' })).toBe('/screening/consent');
	expect(await phone.lead('/screening?/answer', { urgent: 'chest' })).toBe('/screening/emergency');
	expect(await phone.lead('/screening/consent', { agree: 'yes' })).toBe('/screening');
});

test('nothing ticked is not a "none": it is asked again', async ({ page }) => {
	await page.goto('/screening');
	await ready(page);
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page.locator('#urgent-issue')).toHaveText(
		'Tick all that fit, or tick “None of these”.'
	);
	await expect(page.locator(':checked')).toHaveCount(0);
});

test('a chosen number stands alone, large, where help is named', async ({ page }) => {
	await page.goto('/screening');
	await page.getByRole('link', { name: 'Choose your emergency number' }).click();
	await page.getByLabel('000').check();
	await page.getByRole('button', { name: 'Keep this number' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await ready(page);
	await page.getByRole('checkbox').first().check();
	await expect(page.getByRole('link', { name: 'Call 000' })).toHaveAttribute('href', 'tel:000');
	await expect(page.getByRole('link', { name: '112' })).toHaveCount(0);
	await page.goto('/safety');
	await expect(page.getByRole('link', { name: 'Call 000' })).toBeVisible();
});

test('the signs and the numbers work without script', async ({ browser, house }) => {
	const page = await browser.newPage({ javaScriptEnabled: false, baseURL: house.url });
	await page.goto('/screening');
	await page.getByRole('checkbox').first().check();
	await expectNumbers(page);
	await page.getByRole('button').click();
	await expect(page).toHaveURL(/\/screening\/emergency$/);
	await expectNumbers(page);
	await page.close();
});

test('without a network the signs and the numbers are there all the same', async ({
	page,
	context
}) => {
	await page.goto('/screening');
	await page.evaluate(async () => {
		await navigator.serviceWorker.ready;
	});
	await expect
		.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null))
		.toBe(true);
	await context.setOffline(true);
	await page.goto('/screening');
	await ready(page);
	await page.getByRole('checkbox').first().check();
	await expectNumbers(page);
	await page.goto('/bands');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('No network right now');
	await expectNumbers(page);
	await context.setOffline(false);
});
