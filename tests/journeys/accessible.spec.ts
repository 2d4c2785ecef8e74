import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { walks } from './stops.ts';
import { expect, test } from './test.ts';

/** WCAG 2.2, levels A and AA, and what axe calls best practice. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const widths = [360, 1280];
const lights = ['light', 'dark'] as const;

for (const { name, go } of walks) {
	test(`axe finds nothing, narrow and wide, light and dark: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		test.setTimeout(180_000);
		const found: string[] = [];
		await go({ page, phone, house }, async (stop) => {
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
		expect(found).toEqual([]);
	});
}

async function violations(page: Page): Promise<string[]> {
	const { violations } = await new AxeBuilder({ page })
		.options({ runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] })
		// Without opening a page of its own for frames: no page of this app has one.
		.setLegacyMode()
		.analyze();
	return violations.flatMap(({ id, help, nodes }) =>
		nodes.map(({ target, html }) => `${id} (${help}) at ${target.join(' ')}: ${html.slice(0, 120)}`)
	);
}
