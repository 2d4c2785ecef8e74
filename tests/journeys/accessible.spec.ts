import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { allWalks } from './all-walks.ts';
import { demoWalks, inEmptyHouse } from './demo-stops.ts';
import { expect, test } from './lantern-street.ts';
import { missedOn } from './looked-at.ts';

const options: Parameters<AxeBuilder['options']>[0] = {
	runOnly: {
		type: 'tag',
		// WCAG 2.2, levels A and AA, and what axe calls best practice.
		values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
	},
	resultTypes: ['violations']
};

type Found = Awaited<ReturnType<AxeBuilder['analyze']>>;

const widths = [360, 1280];
const lights = ['light', 'dark'] as const;

const all = [
	...allWalks.map((walk) => ({ ...walk, run: test })),
	...demoWalks.map((walk) => ({ ...walk, run: inEmptyHouse }))
];

for (const { name, go, run } of all) {
	run(
		`axe finds nothing, narrow and wide, light and dark: ${name}`,
		async ({ page, phone, house }) => {
			const found: string[] = [];
			const seen = new Set<string>();
			await go({ page, phone, house }, async (stop) => {
				seen.add(new URL(page.url()).pathname);
				for (const width of widths) {
					await page.setViewportSize({ width, height: 800 });
					for (const colorScheme of lights) {
						await page.emulateMedia({ colorScheme });
						found.push(
							...(await violations(page)).map((is) => `${stop}, ${width}, ${colorScheme}: ${is}`)
						);
					}
				}
			});
			// One slip in a colour is on every page: the first are enough to find it.
			expect(found.slice(0, 20)).toEqual([]);
			expect(missedOn(name, seen), 'pages that looked-at.ts says are on this walk').toEqual([]);
		}
	);
}

async function violations(page: Page): Promise<string[]> {
	const isThere = await page.evaluate(() => 'axe' in window);
	const { violations } = isThere ? await page.evaluate(again, options) : await bring(page);
	return violations.flatMap(({ id, help, nodes }) =>
		nodes.map(({ target, html }) => `${id} (${help}) at ${target.join(' ')}: ${html.slice(0, 120)}`)
	);
}

/** Without opening a page of its own for frames: no page of this app has one. */
const bring = (page: Page) => new AxeBuilder({ page }).options(options).setLegacyMode().analyze();

/** Runs in the page, where axe stays until the next one is opened: bringing it takes the most time. */
function again(chosen: typeof options): Promise<Found> {
	const { axe } = window as unknown as {
		axe: { run: (where: Document, chosen: typeof options) => Promise<Found> };
	};
	return axe.run(document, chosen);
}
