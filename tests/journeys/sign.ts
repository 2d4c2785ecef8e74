import { expect, type Page } from '@playwright/test';
import type { Phone } from './phone.ts';
import { ready } from './walk.ts';

/** May run, at home in the zone; then a sign is ticked. */
export async function tickASign(page: Page, phone: Phone) {
	await page.goto('/screening');
	await ready(page);
	await phone.screen();
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await page.goto('/screening');
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('checkbox').first().check();
	await page.getByRole('button', { name: 'Go on' }).click();
	await expect(page).toHaveURL(/\/screening\/emergency$/);
}

export async function expectAskFirst(page: Page) {
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first, today');
	await expect(page.getByText('You told us about an urgent sign.')).toContainText(
		'Who can lift this: a doctor.'
	);
}
