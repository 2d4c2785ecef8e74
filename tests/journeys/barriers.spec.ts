import { allWalks } from './all-walks.ts';
import { byKeys } from './barriers/by-keys.ts';
import { bringContrast } from './barriers/contrast.ts';
import { heard } from './barriers/heard.ts';
import { inOwnColours } from './barriers/own-colours.ts';
import { cutOff, scrollsSideways, stuck, tooWide } from './barriers/room.ts';
import { tooSmall } from './barriers/targets.ts';
import { wider } from './barriers/wider-text.ts';
import { expect, test } from './lantern-street.ts';

/** A window of 1280 by 1024 px zoomed four times: WCAG 2.2, 1.4.10, and 320 px is the narrowest. */
const ZOOMED_FOUR_TIMES = { width: 320, height: 256 };
/** A window of 1280 by 800 px zoomed twice: WCAG 2.2, 1.4.4. */
const ZOOMED_TWICE = { width: 640, height: 400 };
const USUAL = { width: 1280, height: 720 };

// What axe cannot see, at every stop of one walk; each finding names its criterion of WCAG 2.2.
for (const { name, go } of allWalks) {
	test(`nothing stands in the way by keys, by ear, zoomed or in colours of one's own: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		const found: string[] = [];
		await go({ page, phone, house }, async (stop) => {
			const note = (what: readonly string[], how = '') =>
				found.push(...what.map((is) => `${stop}${how}: ${is}`));
			await bringContrast(page);
			await page.setViewportSize(ZOOMED_FOUR_TIMES);
			note(await tooWide(page), ', at 400 %');
			note(await scrollsSideways(page), ', at 400 %');
			note(await stuck(page), ', at 400 %');
			note(await tooSmall(page));
			await wider(page, async () => {
				note(await tooWide(page), ', with wider text');
				note(await cutOff(page), ', with wider text');
			});
			note(await byKeys(page), ', at 400 %');
			await page.setViewportSize(ZOOMED_TWICE);
			note(await tooWide(page), ', at 200 %');
			note(await stuck(page), ', at 200 %');
			await page.setViewportSize(USUAL);
			note(await heard(page));
			note(await inOwnColours(page));
		});
		// A slip in what every page shares is at every stop: the first are enough to find it.
		expect(found.slice(0, Number(process.env.ALL ?? 20))).toEqual([]);
	});
}
