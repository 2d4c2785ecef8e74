import { learnedFormulas } from '../../src/lib/guidance/learned-formulas.ts';
import { formulas, type Formula } from '../../src/lib/physiology/formulas.ts';
import { agreements } from '../../src/lib/published/agreement.ts';
import { everyValue } from '../../src/lib/published/every-value.ts';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

const all: Readonly<Record<string, Formula>> = { ...formulas, ...learnedFormulas };

test('every formula of the code is on the page, and each of its sources leads to its place', async ({
	page
}) => {
	await page.goto('/methods');
	await page.getByRole('link', { name: 'Every formula' }).click();
	await expect(page).toHaveURL(/\/methods\/formulas/);
	await expect(page.locator('section[aria-labelledby]').first()).toBeVisible();
	const ids = await page
		.locator('section[aria-labelledby]')
		.evaluateAll((all) => all.map((it) => it.getAttribute('aria-labelledby') ?? ''));
	expect(ids.sort()).toEqual(Object.keys(all).sort());
	const links = await page
		.locator('section a')
		.evaluateAll((all) => all.map((it) => new URL((it as HTMLAnchorElement).href).hash.slice(1)));
	expect(links).toHaveLength(Object.values(all).flatMap(({ sources }) => sources).length);
	await page.goto('/methods');
	const places = await page.locator('li[id]').evaluateAll((all) => all.map((it) => it.id));
	expect(links.filter((id) => !places.includes(id))).toEqual([]);
});

test('the table of errors has every number that a reader sees, known or not', async ({ page }) => {
	await page.goto('/methods');
	const rows = page.locator('.errors tbody tr');
	const shown = Object.values(all).filter(({ use }) => ['band', 'speed', 'expected'].includes(use));
	await expect(rows).toHaveCount(shown.length);
	await expect(rows.filter({ hasText: 'no one number' })).toHaveCount(
		shown.filter(({ error }) => error === null).length
	);
	// Sarzynski 2013 (abstract): the error of Tanaka's equation in 762 adults who were not active.
	const age = rows.filter({ hasText: 'Maximum pulse from age' });
	await expect(age).toContainText('11.4 bpm');
	await age.getByRole('link', { name: 'Sarzynski 2013' }).click();
	await expect(page.locator('#sarzynski2013')).toBeInViewport();
});

// What the two sides share is the data of the published values, never the page's own text.
test('the table of checks says what a count of the published values says', async ({ page }) => {
	await page.goto('/methods/checks');
	const rows = await page
		.locator('tbody tr:has(td)')
		.evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
	const wanted = agreements(everyValue);
	expect(rows).toHaveLength(wanted.length);
	expect(rows.map(([, count]) => Number(count))).toEqual(wanted.map(({ count }) => count));
	await expect(page.getByText(`beside ${everyValue.length} values`)).toBeVisible();
	await expect(page.getByText('All lie within what is allowed')).toBeVisible();
});

// deVan2005 measured 20 to 27 beats, the middle of which is 23.5; our sum gives 20.09 (barak2011).
test('where two measured things differ, the difference is shown and not hidden', async ({
	page
}) => {
	await page.goto('/methods/checks');
	const about = page.locator('tbody', { hasText: 'Why a count after stopping reads low' });
	const row = about.getByRole('row', { name: /printed there/ });
	await expect(row.getByRole('cell').last()).toContainText('3.4 bpm');
	await expect(row.getByRole('cell').last()).toContainText('of 3.5 bpm allowed');
});

test('the steps lead from age to the very band that is shown', async ({ page, phone }) => {
	await phone.screen({ 'age.years': 46 });
	await page.goto('/methods/yours');
	await expect(page.getByRole('link', { name: 'Measure my resting pulse' })).toBeVisible();
	await expect(page.locator('main')).not.toContainText('bpm');
	await phone.measureResting(68, todayIn('UTC'));
	await page.goto('/bands');
	await ready(page);
	const region = page.getByRole('region', { name: 'Steady run' });
	const [low, high] = (await region.locator('.pulse strong').innerText()).split('–');
	await page.getByRole('link', { name: 'Your own numbers, step by step' }).click();
	// Worked out on paper: 208 - 0.7 x 46 = 175.8 (Tanaka 2001), less 68, half of it over rest 121.9.
	await expect(page.getByText('208 − 0.7 × 46 = 175.8. Doubt: 11.4')).toBeVisible();
	await expect(page.getByText('175.8 − 68.0 = 107.8')).toBeVisible();
	await expect(page.getByText('50 % of 107.8 is 53.9. Plus 68.0 makes 121.9')).toBeVisible();
	await expect(page.getByText(`Your band: ${low} to ${high} bpm.`)).toBeVisible();
	await page.getByRole('link', { name: 'Cool-down walk' }).click();
	await expect(page.getByText('Your band: under')).toBeVisible();
});

test('whose gate is closed is led to the result, as everywhere', async ({ page, phone }) => {
	await phone.screen(leadsTo.askFirst);
	await page.goto('/methods');
	await page.getByRole('link', { name: 'Your own numbers, step by step' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
});
