import { distinctive } from './distinctive.ts';
import { rowsOf, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

test('once the form is finished no table holds an answer that can be read', async ({
	phone,
	house
}) => {
	await phone.screen(distinctive);
	const rows = tablesOf(house).flatMap((table) => rowsOf(house, table));
	expect(rows.length).toBeGreaterThan(5);
	for (const row of rows) {
		expect(JSON.stringify(row)).not.toMatch(
			/[:[]577[,}\]]|act\.minutes|spikes|dont_know|dizzy|R-LUNG|SEEK_ADVICE/
		);
	}
});

test('the session cannot be read by script, and no cookie says more than a choice', async ({
	page,
	phone,
	context
}) => {
	await page.goto('/screening');
	await ready(page);
	await phone.screen();
	await page.goto('/bands');
	const readable = (await page.evaluate(() => document.cookie))
		.split('; ')
		.map((one) => one.split('=')[0]);
	expect(readable).toEqual(['time_zone']);
	for (const { name, httpOnly, sameSite } of await context.cookies()) {
		expect(sameSite, name).toBe('Lax');
		if (name.includes('session')) expect(httpOnly).toBe(true);
	}
});
