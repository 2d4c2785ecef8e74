import { bringContrast } from './barriers/contrast.ts';
import { heard } from './barriers/heard.ts';
import { inOwnColours } from './barriers/own-colours.ts';
import { cutOff, scrollsSideways, tooWide } from './barriers/room.ts';
import { tooSmall } from './barriers/targets.ts';
import { wider } from './barriers/wider-text.ts';
import { expect, pathOf, placesOf, test } from './demo-house.ts';
import { routes } from './routes.ts';

// The walks begin with empty lists. Here are weeks of outings, and seven people: WCAG 2.2, each finding
// with its criterion.

for (const as of ['odile', 'mei-lin'] as const) {
	test(`pages that have filled stand in nobody’s way, as ${as}`, async ({ page, phone, house }) => {
		const places = await placesOf(phone);
		await phone.lead('/demo?/look', { as });
		const found: string[] = [];
		for (const route of routes.filter(({ isPage }) => isPage)) {
			await page.setViewportSize({ width: 320, height: 640 });
			await page.goto(house.url + pathOf(route, places), { waitUntil: 'networkidle' });
			await bringContrast(page);
			const all = [
				await tooWide(page),
				await scrollsSideways(page),
				await tooSmall(page),
				await heard(page),
				await inOwnColours(page)
			];
			await wider(page, async () => void all.push(await tooWide(page), await cutOff(page)));
			found.push(...all.flat().map((is) => `${route.id}: ${is}`));
		}
		expect([...new Set(found)].slice(0, Number(process.env.ALL ?? 20))).toEqual([]);
	});
}
