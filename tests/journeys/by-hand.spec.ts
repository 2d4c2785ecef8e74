import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';

async function check(page: Page, sums: readonly [string, string][]) {
	for (const [label, sum] of sums) await page.getByLabel(label, { exact: true }).fill(sum);
	await page.getByRole('button', { name: 'Check my sums' }).click();
}

// Age 46, resting 66: 208 - 0.7 x 46 = 175.8 (Tanaka 2001), reserve 109.8, 40 % of it over rest
// 109.92 and 59 % 130.782 (Karvonen 1957). Worked out on paper.
test('the sums of the invented example, rounded or not, are right', async ({ page }) => {
	await page.goto('/methods');
	await page.getByRole('link', { name: 'Work out a band by hand' }).click();
	await check(page, [
		['Maximum', '175.8'],
		['Reserve', '109,8'],
		['Lower edge', '110'],
		['Upper edge', '131']
	]);
	await expect(page.getByRole('status')).toContainText('All four are right');
});

test('a wrong sum and what is no number are said at their fields', async ({ page }) => {
	await page.goto('/methods/by-hand');
	await check(page, [
		['Maximum', '174'],
		['Reserve', '110'],
		['Lower edge', '110'],
		['Upper edge', '131']
	]);
	await expect(page.getByRole('alert').getByRole('link')).toHaveCount(1);
	await expect(page.getByRole('alert')).toContainText('Maximum: We get another number here');
	await check(page, [['Maximum', 'many']]);
	await expect(page.getByRole('alert')).toContainText('Type a number, such as 110');
	await expect(page.getByLabel('Maximum', { exact: true })).toHaveValue('many');
});
