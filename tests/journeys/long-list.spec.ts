import type { Page } from '@playwright/test';
import { expect, test, type LanternStreet } from './lantern-street.ts';
import { rowsOf } from './rows.ts';

// Our own limits, no source; a form of 512K at most is what the server takes unless it is told
// otherwise. Names are invented.

const HEAD = 'Name;Mail;Phone;Street;Town;Joined;Fee;Remark';
const row = (i: number) =>
	`Runner ${i};runner${i}@lantern.example;+353 20 910 ${1000 + i};${i} Mill Lane;Dublin;2026-01-15;paid;comes by bus`;
const narrow = (i: number) => `Runner ${i};runner${i}@lantern.example`;

/** A list of so many people. */
const list = (count: number, of: (i: number) => string, head = HEAD) =>
	[head, ...Array.from({ length: count }, (_, i) => of(i))].join('\r\n');

async function take(page: Page, { path }: LanternStreet, text: string) {
	await page.goto(`${path}/import`);
	const buffer = Buffer.from(text);
	await page
		.getByLabel('File with names')
		.setInputFiles({ name: 'club.csv', mimeType: 'text/csv', buffer });
	await page.getByRole('button', { name: 'Look at the names' }).click();
	return buffer.length;
}

test('ten thousand rows are refused at the field, with the limit that is true, however wide they are', async ({
	page,
	lantern,
	house
}) => {
	const kept = () => rowsOf(house, 'member').filter(({ group_id }) => group_id === lantern.groupId);
	const size = await take(page, lantern, list(10_000, row));
	expect(size).toBeGreaterThan(512 * 1024);
	await expect(page).toHaveURL(/\/import\?\/look$/);
	const summary = page.getByRole('alert');
	await expect(summary).toContainText('This list is larger than 512 KB');
	await expect(summary).toContainText('at most 500');
	await summary.getByRole('link').click();
	const field = page.getByLabel('File with names');
	await expect(field).toBeFocused();
	await expect(field).toHaveAttribute('aria-invalid', 'true');
	await expect(page.locator('#file-issue')).toContainText('Nothing was added');

	expect(await take(page, lantern, list(10_000, narrow))).toBeLessThan(512 * 1024);
	await expect(page.getByRole('alert')).toContainText('This list has 10,000 names. At most 500');
	await take(page, lantern, list(10_001, narrow));
	await expect(page.getByRole('alert')).toContainText('more than 10,000 lines');
	expect(kept()).toHaveLength(0);
	await page.goto(lantern.path);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lantern Street beginners');
});

test('five hundred rows are added, also where their other columns fill more than a page carries', async ({
	page,
	lantern,
	house
}) => {
	const wide = (i: number) => `${row(i)};${'a long remark '.repeat(12)}`;
	expect(await take(page, lantern, list(500, wide))).toBeGreaterThan(100_000);
	await page.getByRole('button', { name: 'Add these 500 names' }).click();
	await expect(page).toHaveURL(lantern.coach.url + lantern.path);
	const kept = rowsOf(house, 'member').filter(({ group_id }) => group_id === lantern.groupId);
	expect(kept).toHaveLength(500);
});

test('names with commas, quotes and formulas reach the group as they were looked at', async ({
	page,
	lantern,
	house
}) => {
	const names = ['"Silva, Ines"', "Gwen D'Arcy", 'راشد', '"Tobi ""Karl"" O’Neill"', '=Ada'];
	await take(page, lantern, `Name;Town\r\n${names.map((name) => `${name};Cork\r\n`).join('')}`);
	await page.getByRole('button', { name: 'Add these 5 names' }).click();
	await expect(page).toHaveURL(lantern.coach.url + lantern.path);
	const kept = rowsOf(house, 'member')
		.filter(({ group_id }) => group_id === lantern.groupId)
		.map(({ name }) => String(name));
	expect(kept.sort()).toEqual(
		['Silva, Ines', "Gwen D'Arcy", 'راشد', 'Tobi "Karl" O’Neill', '=Ada'].sort()
	);
});
