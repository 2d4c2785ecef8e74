import type { Walk } from './stops.ts';

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
		}
	}
];
