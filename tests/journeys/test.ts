import { test as base } from '@playwright/test';
import { House } from './house.ts';

/** Each worker has a house of its own; each test begins with no cookie, and so as nobody. */
export const test = base.extend<{ baseURL: string }, { house: House }>({
	house: [
		async ({}, use) => {
			const house = await House.build();
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker' }
	],
	baseURL: async ({ house }, use) => {
		await use(house.url);
	}
});

export { expect } from '@playwright/test';
