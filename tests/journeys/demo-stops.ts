import { House } from './house.ts';
import type { Walk } from './stops.ts';
import { test } from './test.ts';

/** A house in which nobody has been: each worker that looks at one has its own. */
export const inEmptyHouse = test.extend<object, { house: House }>({
	house: [
		async ({}, use) => {
			const house = await House.build();
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker' }
	]
});

/** The page of the made-up group, which only an empty house has. */
export const demoWalks: readonly Walk[] = [
	{
		name: 'the made-up group',
		async go({ page, phone }, look) {
			await page.goto('/demo');
			await look('demo: an empty house', page);
			await phone.send('/demo?/load');
			await page.goto('/demo');
			await look('demo: its people', page);
			await page.goto('/demo?only');
			await look('demo: turned away', page);
			await phone.send('/demo?/remove');
		}
	}
];
