import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

// Common practice, no source: what carries meaning by colour still does where a reader forces theirs.
test.use({ forcedColors: 'active' });

for (const colorScheme of ['light', 'dark'] as const) {
	test.describe(`with a reader's own colours, ${colorScheme}`, () => {
		test.use({ colorScheme });

		test('the chosen answer has another frame than the others', async ({ page, phone }) => {
			await phone.begin();
			await page.goto('/screening/questions/3');
			const frames = () =>
				page
					.locator('.choice')
					.evaluateAll((all) => all.map((it) => getComputedStyle(it).borderTopColor));
			expect(new Set(await frames()).size).toBe(1);
			await page.getByRole('radio').nth(1).check();
			const [first, chosen, third] = await frames();
			expect(third).toBe(first);
			expect(chosen).not.toBe(first);
		});

		test('a panel has a frame, and the edges of a band the colour of words', async ({
			page,
			phone
		}) => {
			await phone.screen();
			await phone.measureResting(68, todayIn('UTC'));
			await page.goto('/bands');
			await ready(page);
			const words = await page.locator('body').evaluate((it) => getComputedStyle(it).color);
			const ground = await page
				.locator('body')
				.evaluate((it) => getComputedStyle(it).backgroundColor);
			expect(words).not.toBe(ground);
			await expect(page.locator('.panel').first()).toHaveCSS('border-top-color', words);
			const edges = page.getByRole('region', { name: 'Steady run' }).locator('svg .edge');
			await expect(edges).toHaveCount(2);
			for (const edge of await edges.all()) await expect(edge).toHaveCSS('stroke', words);
		});
	});
}

test.describe('for a reader who asks for less motion', () => {
	test.use({ reducedMotion: 'reduce' });

	test('nothing on the longest page moves', async ({ page, phone }) => {
		await phone.screen();
		await phone.measureResting(68, todayIn('UTC'));
		await page.goto('/bands');
		await ready(page);
		await page.getByText('Where these numbers come from').first().click();
		expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
	});
});
