import AxeBuilder from '@axe-core/playwright';
import { todayIn } from './days.ts';
import { become, expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

test('a runner sees what the group has set, and makes outings of their own', async ({
	page,
	lantern,
	stranger
}) => {
	const plan = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await lantern.coach.lead(`${plan}?/plan`, { onDate: todayIn('Europe/Dublin') });
	const walker = await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await become(page, walker);
	await page.goto('/bands');
	await page.getByRole('link', { name: 'My outings' }).click();
	await expect(page.getByText('Outing 1, Lantern Street beginners')).toBeVisible();
	await expect(page.getByText('each run is a brisk walk')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.getByRole('button', { name: 'Make an outing' }).click();
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByRole('button', { name: 'Steady run' })).toBeHidden();
	await page.getByLabel('How long').nth(1).fill('12:00');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('status').filter({ hasText: 'Kept.' })).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	// A run is refused also where a form is forged.
	const path = new URL(page.url()).pathname;
	const forged = await walker.send(`${path}?/save`, {
		name: 'Run',
		revision: '2',
		'parts-0-kind': 'steady-run',
		'parts-0-seconds': '2:00'
	});
	expect(forged.status()).toBe(400);
	expect(await forged.text()).toContain('Your result opens walking for now');
	const other = await lantern.join(await stranger(), 'Mei-Lin');
	expect((await other.get(path)).status()).toBe(404);
});
