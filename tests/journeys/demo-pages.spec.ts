import type { APIRequestContext } from '@playwright/test';
import { expect, pathOf, placesOf, test } from './demo-house.ts';
import { routes } from './routes.ts';
import { sheetsOf } from './sheets.ts';

// Our own rules, no source.

const MADE_UP = 'All of this is made up. Nobody here is real.';

/** The page that an address leads to in the end. */
const landing = async (request: APIRequestContext, path: string) =>
	(await request.get(path, { headers: { accept: 'text/html' } })).text();

for (const as of ['odile', 'mei-lin', 'gwen', null] as const) {
	test(`every page says that it is made up, as ${as ?? 'nobody'}`, async ({
		page,
		phone,
		house
	}) => {
		test.setTimeout(120_000);
		const places = await placesOf(phone);
		expect(Object.values(places)).not.toContain('x');
		if (as === null) await page.context().clearCookies();
		else await phone.lead('/demo?/look', { as });
		const pages = routes.filter(({ isPage }) => isPage);
		expect(pages.length).toBeGreaterThan(60);
		const silent: string[] = [];
		for (const route of pages) {
			const text = await landing(page.request, house.url + pathOf(route, places));
			if (!text.includes(MADE_UP)) silent.push(route.id);
		}
		expect(silent).toEqual([]);
	});
}

test('paper says it at the foot of each sheet, and takes no sheet more', async ({
	page,
	phone
}) => {
	test.setTimeout(180_000);
	const { group } = await placesOf(phone);
	const desk = ['cards', 'wall', 'stop-signs', 'cues', 'bands'].map(
		(paper) => `/coach/${group}/${paper}`
	);
	for (const [as, papers] of [
		['odile', [...desk, '/safety', '/learn/teach', '/safety/health']],
		['mei-lin', ['/bands/card', '/bands', '/past']],
		['gwen', ['/screening/doctor']]
	] as const) {
		await phone.lead('/demo?/look', { as });
		for (const path of papers) {
			await page.goto(path, { waitUntil: 'networkidle' });
			await page.evaluate(() => document.fonts.ready);
			const marked = await sheetsOf(page);
			await page.emulateMedia({ media: 'print' });
			const line = page.getByText('Made up. Nobody on this sheet is real.');
			await expect(line, path).toBeVisible();
			// What is fixed stands on each page of a print: CSS Positioned Layout Module Level 3, 3.1.
			await expect(page.locator('aside').first(), path).toHaveCSS('position', 'fixed');
			await page.emulateMedia({ media: null });
			await page
				.locator('aside')
				.first()
				.evaluate((aside) => aside.remove());
			expect(marked, path).toEqual(await sheetsOf(page));
		}
	}
});
