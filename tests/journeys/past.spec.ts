import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { didAnOuting } from './past-outing.ts';
import { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

const clean = async (page: Page) =>
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

test('the empty page says what comes first, to everybody', async ({ page, phone }) => {
	await page.goto('/past');
	await page.getByRole('link', { name: 'Begin with the first questions' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await phone.screen();
	await page.goto('/past');
	await expect(page.getByText('after you have done the first one')).toBeVisible();
	await clean(page);
	await page.getByRole('link', { name: 'Choose your first outing' }).click();
	await expect(page).toHaveURL(/\/outings$/);
});

test('an outing is read part by part, and deleted after asking', async ({ page, phone }) => {
	await phone.screen();
	const place = await didAnOuting(phone);
	await page.goto('/bands');
	await page.getByRole('link', { name: 'Past outings' }).click();
	await expect(page.getByText('2 min running')).toBeVisible();
	await expect(page.getByText('longest run 1 min 10 s')).toBeVisible();
	await clean(page);
	await page.getByRole('listitem').getByRole('link').first().click();
	await expect(page).toHaveURL(new RegExp(`${place}$`));
	await expect(page.getByRole('heading', { name: '4. Steady run' })).toBeVisible();
	await expect(page.getByText('Talk was with breaths').first()).toBeVisible();
	await expect(page.getByText('134 bpm on average')).toBeVisible();
	await expect(page.getByText('6.4 km/h').first()).toBeVisible();
	await clean(page);
	await page.getByRole('button', { name: 'Delete it' }).click();
	await expect(page.getByRole('alert')).toContainText('Tick the box first.');
	await page.getByLabel('I want to delete this outing').check();
	await page.getByRole('button', { name: 'Delete it' }).click();
	await expect(page.getByText('The outing is deleted.')).toBeVisible();
	expect((await phone.get(place)).status()).toBe(404);
});

test('while the gate is closed it shows what was done, and no number to aim at', async ({
	page,
	phone
}) => {
	await phone.screen();
	const place = await didAnOuting(phone);
	expect(await (await phone.get(place)).text()).toMatch(/\b(137|134)\b/);
	await phone.screen(leadsTo.askFirst);
	for (const path of [place, `${place}/__data.json`, '/past', '/past/__data.json']) {
		const text = await (await phone.get(path)).text();
		expect(text, path).not.toMatch(/bpm\b|\b(13[47]|141)\b|\b6\.4\b|effort \d/);
	}
	await page.goto(place);
	await expect(page.getByText('Talk was with breaths').first()).toBeVisible();
	await clean(page);
});

test('with pulse off no pulse is there', async ({ phone }) => {
	await phone.screen();
	const place = await didAnOuting(phone);
	await phone.screen(leadsTo.byTalk);
	const later = await didAnOuting(phone);
	for (const path of [place, later, `${place}/__data.json`, `${later}/__data.json`]) {
		const text = await (await phone.get(path)).text();
		expect(text, path).not.toMatch(/bpm\b|\b(13[47]|141)\b/);
		if (!path.endsWith('json')) expect(text).toContain('effort 5 of 10');
	}
	const file = await (await phone.get('/account/export')).text();
	expect(file).not.toMatch(/"(bpm|meanBpm)": 13[47]/);
});

test('nobody else finds it', async ({ phone, house, playwright }) => {
	await phone.screen();
	const place = await didAnOuting(phone);
	const other = new Phone(await playwright.request.newContext(), house.url);
	expect((await other.get(place)).status()).toBe(404);
	await other.screen();
	expect((await other.get(place)).status()).toBe(404);
	expect((await other.send(`${place}?/remove`, { sure: 'yes' })).status()).toBe(404);
	expect((await phone.get(place)).status()).toBe(200);
	await other.request.dispose();
});

test('the morning after is asked about on both pages, and pain stops runs until it is gone', async ({
	page,
	phone
}) => {
	await phone.screen();
	await didAnOuting(phone);
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'How are your legs today?' })).toBeVisible();
	await page.getByRole('button', { name: 'Keep this' }).click();
	await expect(page.getByRole('alert')).toContainText('Pick one of the three.');
	await clean(page);
	await page.getByLabel('New pain').check();
	await page.getByLabel('Where?').selectOption('shin');
	await page.getByRole('button', { name: 'Keep this' }).click();
	await expect(page.getByText('No running until it is gone.')).toBeVisible();
	await clean(page);
	await page.getByRole('listitem').getByRole('link').first().click();
	await expect(page.getByText('The next morning: New pain (shin).')).toBeVisible();

	await page.goto('/bands');
	await expect(page.getByText('may walk until')).toBeVisible();
	await clean(page);
	await page.getByRole('button', { name: 'It is gone' }).click();
	await expect(page.getByRole('alert')).toContainText('Tick the box first.');
	await page.getByLabel('The pain is gone').check();
	await page.getByRole('button', { name: 'It is gone' }).click();
	await page.goto('/bands');
	await expect(page.getByText('may run until')).toBeVisible();
	await expect(page.getByText('How are your legs today?')).toBeHidden();
});

test('a morning that is answered on the bands leads back to them, without script', async ({
	browser,
	house,
	phone
}) => {
	await phone.screen();
	await didAnOuting(phone);
	const state = await phone.request.storageState();
	const context = await browser.newContext({
		baseURL: house.url,
		javaScriptEnabled: false,
		storageState: state
	});
	const page = await context.newPage();
	await page.goto('/bands');
	await page.getByLabel('No new or growing pain').check();
	await page.getByRole('button', { name: 'Keep this' }).click();
	await expect(page).toHaveURL(/\/bands$/);
	await expect(page.getByText('How are your legs today?')).toBeHidden();
	await context.close();
});
