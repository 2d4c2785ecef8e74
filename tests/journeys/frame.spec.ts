import type { Page } from '@playwright/test';
import { allWalks } from './all-walks.ts';
import { expect, test } from './lantern-street.ts';

for (const { name, go } of allWalks) {
	test(`one heading, a title, a language and a way to each slip: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		await go({ page, phone, house }, async (stop) => {
			// What is hidden is no heading: the clock waits behind the signs to stop.
			await expect(page.locator('h1:visible'), stop).toHaveCount(1);
			await expect(page.locator('main'), stop).toHaveCount(1);
			await expect(page.locator('html'), stop).toHaveAttribute('lang', 'en');
			await expect(page, stop).toHaveTitle(/^(.+ · )?Breathmark$/);
			await expect(page.locator('html'), stop).toHaveCSS('scroll-behavior', 'auto');
			await eachSlipHasAWay(page, stop);
		});
	});
}

/** The summary is read first, and each of its links lands on a field that names its own issue. */
async function eachSlipHasAWay(page: Page, stop: string) {
	const summary = page.getByRole('alert').filter({ has: page.getByRole('heading') });
	if ((await summary.count()) === 0) return;
	await expect(summary, `${stop}: the page opens on its summary`).toBeFocused();
	for (const link of await summary.getByRole('link').all()) {
		const where = `${stop}: ${await link.textContent()}`;
		await link.press('Enter');
		const field = page.locator(':focus');
		await expect(field, where).toHaveCount(1);
		await expect(field, where).toBeInViewport();
		await expect(field, where).toHaveId(new URL(page.url()).hash.slice(1));
		if (await field.evaluate((it) => it.matches('a'))) continue;
		await expect(field, where).toHaveAttribute('aria-invalid', 'true');
		const described = await field.evaluate((it) =>
			(it.closest('fieldset') ?? it).getAttribute('aria-describedby')
		);
		expect(described, where).toMatch(/-issue/);
	}
}
