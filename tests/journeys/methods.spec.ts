import { formulas } from '../../src/lib/physiology/formulas.ts';
import { agreements } from '../../src/lib/published/agreement.ts';
import { everyValue } from '../../src/lib/published/every-value.ts';
import { expect, test } from './test.ts';

test('every formula of the code is on the page, and each of its sources leads to its place', async ({
	page
}) => {
	await page.goto('/methods');
	await page.getByRole('link', { name: 'Every formula' }).click();
	const ids = await page
		.locator('section[aria-labelledby]')
		.evaluateAll((all) => all.map((it) => it.getAttribute('aria-labelledby') ?? ''));
	expect(ids.sort()).toEqual(Object.keys(formulas).sort());
	const links = await page
		.locator('section a')
		.evaluateAll((all) => all.map((it) => new URL((it as HTMLAnchorElement).href).hash.slice(1)));
	expect(links).toHaveLength(Object.values(formulas).flatMap(({ sources }) => sources).length);
	await page.goto('/methods');
	const places = await page.locator('li[id]').evaluateAll((all) => all.map((it) => it.id));
	expect(links.filter((id) => !places.includes(id))).toEqual([]);
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
