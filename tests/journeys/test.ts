import { test as base } from '@playwright/test';
import { House } from './house.ts';
import { Phone } from './phone.ts';

interface Fixtures {
	readonly baseURL: string;
	/** The page's own cookies, for forms and addresses that need no page to be drawn. */
	readonly phone: Phone;
	readonly asAtFirst: undefined;
}

/**
 * Each worker has a house of its own; each test begins with no cookie, and so as nobody. A test that
 * opens the house again with another key or clock leaves it to this to put it back.
 */
export const test = base.extend<Fixtures, { house: House }>({
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
	},
	phone: async ({ page, house }, use) => {
		await use(new Phone(page.request, house.url));
	},
	asAtFirst: [
		async ({ house }, use, testInfo) => {
			const printedBefore = house.printed.length;
			await use(undefined);
			const printed = house.printed.slice(printedBefore);
			if (testInfo.status !== testInfo.expectedStatus) {
				await testInfo.attach('what the server printed', {
					body: printed,
					contentType: 'text/plain'
				});
			}
			if (house.isChanged) await house.reopen({});
		},
		{ auto: true }
	]
});

export { expect } from '@playwright/test';
