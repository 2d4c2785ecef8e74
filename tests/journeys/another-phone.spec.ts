import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';
import { measureResting, ready } from './walk.ts';

const WRONG = 'This code does not work.';

async function makeCode(page: Page): Promise<string> {
	await page.goto('/account');
	await page.getByRole('button', { name: 'Make a code' }).click();
	const code = await page.locator('.code').innerText();
	expect(code).toMatch(/^[2-9A-Z]{4}-[2-9A-Z]{4}$/);
	return code;
}

async function typeCode(page: Page, code: string) {
	await page.goto('/link');
	await ready(page);
	await page.getByLabel('Code').fill(code);
	await page.getByRole('button', { name: 'Use this code' }).click();
}

test('a code, typed in small letters, brings the account to another phone, once', async ({
	page,
	phone,
	browser,
	house
}) => {
	await phone.screen();
	await measureResting(page, 68);
	const code = await makeCode(page);
	const other = await browser.newPage({ baseURL: house.url });
	await other.goto('/bands');
	await expect(other.getByRole('heading', { level: 1 })).toHaveText('No result yet');
	await typeCode(other, code.toLowerCase());
	await other.goto('/bands');
	await expect(other.getByText('126–140').first()).toBeVisible();

	const third = await browser.newPage({ baseURL: house.url });
	await typeCode(third, code);
	await expect(third.locator('#code-issue')).toContainText(WRONG);
	await expect(third.getByLabel('Code')).toHaveValue(code);
	await third.goto('/bands');
	await expect(third.getByRole('heading', { level: 1 })).toHaveText('No result yet');

	// Leaving one phone leaves the other as it was.
	await other.goto('/account');
	await other.getByText('What happened, and when').click();
	await expect(other.getByText('Another phone was added with a code')).toBeVisible();
	await other.getByRole('button', { name: 'Forget me here' }).click();
	await other.goto('/bands');
	await expect(other.getByRole('heading', { level: 1 })).toHaveText('No result yet');
	await page.goto('/bands');
	await expect(page.getByText('126–140').first()).toBeVisible();
	await Promise.all([other.close(), third.close()]);
});

test('eleven minutes later the code has ended, with the same words as a wrong one', async ({
	page,
	phone,
	browser,
	house
}) => {
	await phone.screen();
	const code = await makeCode(page);
	await house.reopen({ minutesAhead: 11 });
	const other = await browser.newPage({ baseURL: house.url });
	await typeCode(other, code);
	await expect(other.locator('#code-issue')).toContainText(WRONG);
	await typeCode(other, 'AAAA-2222');
	await expect(other.locator('#code-issue')).toContainText(WRONG);
	await typeCode(other, 'short');
	await expect(other.locator('#code-issue')).toContainText(WRONG);
	await typeCode(other, '');
	await expect(other.locator('#code-issue')).toHaveText('Type the code.');
	await other.close();
});

test('a new code ends the one before', async ({ page, phone, browser, house }) => {
	await phone.screen();
	const first = await makeCode(page);
	const second = await makeCode(page);
	const other = await browser.newPage({ baseURL: house.url });
	await typeCode(other, first);
	await expect(other.locator('#code-issue')).toContainText(WRONG);
	await typeCode(other, second.replace('-', ' '));
	await expect(other.getByRole('link', { name: 'Your bands' })).toBeVisible();
	await other.close();
});

test('a phone that leaves is nobody, and keeps nothing that it chose', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.lead('/emergency-number', { number: '000' });
	await page.goto('/account');
	await page.getByLabel('Light or dark').selectOption('dark');
	await page.getByRole('button', { name: 'Keep these settings' }).click();
	await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
	await page.getByRole('button', { name: 'Forget me here' }).click();
	await expect(page.getByRole('link', { name: 'I am starting to run' })).toBeVisible();
	expect((await context.cookies()).map(({ name }) => name)).toEqual([]);
	await expect(page.locator('html')).not.toHaveAttribute('data-theme');
	await page.goto('/safety');
	await expect(page.getByRole('link', { name: '000', exact: true })).toBeVisible();
	await expect(page.getByRole('link', { name: '112', exact: true })).toBeVisible();
});
