import { expect, test } from './lantern-street.ts';

// Common practice, no source: what nobody said is asked, and no answer stands there beforehand.

test('without script a new group’s time zone is asked, until a phone has named its own', async ({
	browser,
	lantern
}) => {
	const context = await browser.newContext({
		baseURL: lantern.coach.url,
		javaScriptEnabled: false,
		storageState: await lantern.coach.request.storageState()
	});
	const page = await context.newPage();
	const zone = page.getByLabel('Time zone');

	await context.clearCookies({ name: 'time_zone' });
	await page.goto('/coach/new');
	await expect(zone).toHaveValue('');
	await page.getByLabel('Name of the group').fill('Quay Street');
	await page.getByRole('button', { name: 'Make this group' }).click();
	await expect(
		page.getByRole('link', { name: 'Time zone: Pick one of the choices.' })
	).toBeVisible();
	await expect(zone).toHaveAccessibleDescription(/Pick one of the choices/);
	await expect(zone).toHaveAttribute('aria-invalid', 'true');

	await context.addCookies([{ name: 'time_zone', value: 'Europe/Dublin', url: lantern.coach.url }]);
	await page.goto('/coach/new');
	await expect(zone).toHaveValue('Europe/Dublin');
	await context.close();
});
