import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { answerAll, finish, leadsTo, type Answers } from './walk.ts';

// Common practice, no source: every form works where script is off, blocked or did not arrive.
test.use({ javaScriptEnabled: false });

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

async function screenByHand(page: Page, changes: Answers = {}) {
	await page.goto('/');
	await page.getByRole('link', { name: 'I am starting to run' }).click();
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Next question' }).click();
	await page.getByLabel('I agree that this app').check();
	await page.getByRole('button', { name: 'Start the questions' }).click();
	await answerAll(page, changes);
	await finish(page);
}

test('a sign that is ticked shows the numbers at once, and sending it leads to help', async ({
	page
}) => {
	await page.goto('/screening');
	const number = page.getByRole('link', { name: '112' });
	await expect(number).toBeHidden();
	await page.getByLabel('My face droops').check();
	await expect(number).toBeVisible();
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(heading(page)).toHaveText('Get help now');
});

test('questions, result, bands and a resting pulse', async ({ page }) => {
	await screenByHand(page);
	await expect(heading(page)).toHaveText('From what you told us, you may run');
	await page.getByRole('link', { name: 'See my bands' }).click();
	await page.getByRole('link', { name: 'Measure my resting pulse' }).click();
	await expect(page.locator('noscript p')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Start counting' })).toBeHidden();
	await page.getByLabel('Beats that you counted').fill('17');
	await page.getByLabel('15 seconds').check();
	await page.getByRole('button', { name: 'Add this morning' }).click();
	// 17 beats in 15 s are 68 a minute.
	await expect(page.getByText('Resting pulse 68')).toBeVisible();
	await page.goto('/bands');
	// Age 34: 208 - 0.7 x 34 = 184.2 (Tanaka 2001); steady run 50 to 62 % of the reserve over 68
	// (Karvonen 1957): 126.1 to 140.04.
	await expect(page.getByRole('table', { name: /Each part/ })).toContainText('126–140');
	await expect(page.locator('noscript p')).toBeVisible();
	await expect(page.locator('canvas')).toBeHidden();
});

test('advice is written down and lifts its reason', async ({ page }) => {
	await screenByHand(page, leadsTo.askFirst);
	await expect(heading(page)).toHaveText('Ask first');
	await page.getByRole('link', { name: 'I have had advice' }).click();
	await page.getByLabel('When was it?').fill(todayIn('UTC'));
	await page.getByRole('radio', { name: 'A doctor' }).check();
	await page.getByLabel('Your ankles swell up').check();
	await page.getByLabel('No limits for this programme').check();
	await page.getByRole('button', { name: 'Keep this advice' }).click();
	// Whoever is new to exercise walks first.
	await expect(heading(page)).toHaveText('From what you told us, you begin by walking');
});

test('another phone by a code, other colours, and everything deleted', async ({
	page,
	browser,
	phone
}) => {
	await phone.screen();
	await page.goto('/account');
	await page.getByLabel('Light or dark').selectOption('Dark');
	await page.getByRole('button', { name: 'Keep these settings' }).click();
	await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
	await page.getByRole('button', { name: 'Make a code' }).click();
	const code = page.locator('.code');
	await expect(code).toHaveText(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/);
	await expect(code).toBeInViewport();

	const other = await browser.newContext({ javaScriptEnabled: false });
	const there = await other.newPage();
	await there.goto(`${phone.url}/link`);
	await there.getByLabel('Code').fill((await code.innerText()).toLowerCase());
	await there.getByRole('button', { name: 'Use this code' }).click();
	await expect(there.getByRole('link', { name: 'Your bands' })).toBeVisible();
	await other.close();

	await page.getByRole('button', { name: 'Delete everything now' }).click();
	await expect(page.getByRole('link', { name: 'Tick the box first.' })).toBeInViewport();
	await page.getByLabel('I want to delete everything').check();
	await page.getByRole('button', { name: 'Delete everything now' }).click();
	await expect(heading(page)).toHaveText('Everything is deleted.');
	expect(await phone.result()).toBe('No result yet');
});
