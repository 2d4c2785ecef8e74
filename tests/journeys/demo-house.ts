import { House } from './house.ts';
import { Phone } from './phone.ts';
import type { Route } from './routes.ts';
import { test as base } from './test.ts';

/** Each worker has one house, with the made-up group in it. */
export const test = base.extend<{ phone: Phone }, { house: House }>({
	house: [
		async ({}, use) => {
			const house = await House.build();
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker' }
	],
	phone: async ({ page, house }, use) => {
		const phone = new Phone(page.request, house.url);
		await phone.send('/demo?/load');
		await use(phone);
	}
});

/** Ids as the pages of the made-up group lead to them. */
export async function placesOf(phone: Phone): Promise<Record<string, string>> {
	const found = async (path: string, where: RegExp) =>
		where.exec(await (await phone.get(path)).text())?.[1] ?? 'x';
	await phone.lead('/demo?/look', { as: 'odile' });
	const group = await found('/coach', /\/coach\/([\w-]{36})"/);
	const places = {
		group,
		member: await found(`/coach/${group}`, /\/members\/([\w-]{36})/),
		outing: await found(`/coach/${group}/outings`, /\/outings\/([\w-]{36})/),
		token: await found(`/coach/${group}/invite`, /\/join\/([\w-]+)/)
	};
	await phone.lead('/demo?/look', { as: 'mei-lin' });
	return { ...places, run: await found('/past', /\/past\/([\w-]{36})/), n: '2' };
}

export const pathOf = ({ id }: Route, places: Record<string, string>) =>
	id.replaceAll(/\[(?:\.\.\.)?(\w+)\]/g, (_, name: string) => places[name] ?? 'x');

export { expect } from './test.ts';
