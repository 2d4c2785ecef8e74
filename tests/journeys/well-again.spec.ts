import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';
import { leadsTo, screen } from './walk.ts';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

async function say(page: Page, feelWell: string, signs: string) {
	await page.goto('/screening/well');
	await page.getByRole('group', { name: 'Do you feel well' }).getByLabel(feelWell).check();
	await page
		.getByRole('group', { name: 'Since you were ill' })
		.getByLabel(signs, { exact: true })
		.check();
	await Promise.all([
		page.waitForEvent('load'),
		page.getByRole('button', { name: 'Send' }).click()
	]);
}

test('ill today: not today, until the runner says on a later day that it is over', async ({
	page,
	house
}) => {
	await screen(page, leadsTo.notToday);
	await expect(heading(page)).toHaveText('Not today');
	await expect(page.getByText('You feel ill today.')).toContainText(
		'This ends when you feel well again.'
	);
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);

	await page.getByRole('link', { name: 'I feel well again' }).click();
	await expect(heading(page)).toHaveText('Do you feel well again?');
	await say(page, 'Yes, I feel well', 'No');
	await expect(page.getByRole('status')).toHaveText(
		'You told us today that you feel ill. Come back tomorrow or later.'
	);
	await page.goto('/bands');
	await expect(heading(page)).toHaveText('Not today');

	await house.reopen({ daysAhead: 1 });
	await page.goto('/screening/result');
	await expect(heading(page)).toHaveText('Not today');
	await say(page, 'No, not yet', 'No');
	await expect(page.getByRole('status')).toContainText('Then rest.');
	await page.goto('/screening/result');
	await expect(heading(page)).toHaveText('Not today');

	await say(page, 'Yes, I feel well', 'No');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(heading(page)).toHaveText('From what you told us, you may run');
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
});

for (const signs of ['Not sure', 'Yes'] as const) {
	test(`after an illness "${signs}" to heart and breathing signs ends the result`, async ({
		page,
		phone,
		house
	}) => {
		await phone.screen(leadsTo.notToday);
		await house.reopen({ daysAhead: 1 });
		await say(page, 'Yes, I feel well', signs);
		await expect(page).toHaveURL(/\/screening\/result$/);
		await expect(heading(page)).toHaveText('Please answer again');
		await page.goto('/bands');
		await expect(page).toHaveURL(/\/screening\/result$/);
	});
}

test('one of the two left open is asked again at its field, and the other stays', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.notToday);
	await page.goto('/screening/well');
	await page.getByLabel('Yes, I feel well').check();
	await page.getByRole('button', { name: 'Send' }).click();
	await expect(page.locator('#signs-issue')).toHaveText('Pick one answer.');
	await expect(page.getByLabel('Yes, I feel well')).toBeChecked();
});

test('well again lifts nothing but the illness', async ({ page, phone, house }) => {
	await phone.screen({ ...leadsTo.notToday, ...leadsTo.askFirst });
	expect(await phone.result()).toBe('Ask first');
	expect((await phone.get('/screening/well')).headers().location).toBe('/screening/result');
	await house.reopen({ daysAhead: 1 });
	const said = { feelWell: 'yes', signs: 'no' };
	expect(await phone.lead('/screening/well', said)).toBe('/screening/result');
	expect(await phone.result()).toBe('Ask first');
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
});
