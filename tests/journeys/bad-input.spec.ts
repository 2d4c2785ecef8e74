import type { Page } from '@playwright/test';
import { plusDays, todayIn } from './days.ts';
import type { House } from './house.ts';
import { rowsOf, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';

// What people type by mistake. Plausible: age 0 to 120, resting pulse 30 to 110 beats a minute,
// weight 30 to 300 kg; common practice, no source.

test.use({ timezoneId: 'UTC' });

const today = todayIn('UTC');
const whole = 'Type your age in whole years, such as 46.';
const number = 'Type your age as a number, such as 46.';
const tooLow = /under 30 beats a minute/;
const tooHigh = /over 110 beats a minute/;

const ages: readonly [string, string | RegExp][] = [
	['1.7', whole],
	['1,7', whole],
	['170', 'It can be 120 at most.'],
	['1990', 'not the year you were born'],
	['-3', 'It cannot be under 0.'],
	['', whole],
	['   ', whole],
	['forty', number],
	['٣٤', number],
	['34 years', number],
	['3e1', number]
];

const counts: readonly [string, number, string | RegExp][] = [
	['0', 60, tooLow],
	['400', 60, tooHigh],
	['401', 60, tooHigh],
	['-68', 60, tooLow],
	['sixty', 60, 'Type a number, such as 68.'],
	['', 60, 'Type the number of beats'],
	['68.5', 60, 'Type a whole number of beats.'],
	['7', 15, tooLow],
	['28', 15, tooHigh],
	['14', 30, tooLow]
];

const days: readonly [string, string][] = [
	['2027-02-29', 'Pick a day'],
	['2026-13-01', 'Pick a day'],
	['yesterday', 'Pick a day'],
	['1999', 'Pick a day'],
	['1999-01-01', 'Use a morning of the last three months.'],
	[plusDays(today, 2), 'That day has not come yet.']
];

/** Everything that is stored, so that a test can say that nothing of it changed. */
function stored(house: House): Record<string, unknown> {
	return Object.fromEntries(tablesOf(house).map((table) => [table, rowsOf(house, table)]));
}

/** The field names its issue, keeps what was typed, and the page opens on the summary. */
async function refused(page: Page, id: string, typed: string, issue: string | RegExp) {
	const field = page.locator(`#${id}`);
	await expect(field).toHaveAttribute('aria-invalid', 'true');
	await expect(field).toHaveAccessibleDescription(issue instanceof RegExp ? issue : RegExp(issue));
	await expect(field).toHaveValue(typed);
	await expect(page.getByRole('alert')).toBeFocused();
}

test('an age that cannot be: a message at the field, what was typed kept, nothing stored', async ({
	page,
	phone,
	house
}) => {
	await phone.begin();
	await page.goto('/screening/questions/2');
	const before = stored(house);
	for (const [typed, issue] of ages) {
		await page.locator('#answer').fill(typed);
		await page.getByRole('button', { name: 'Next question' }).click();
		await refused(page, 'answer', typed, issue);
		await expect(page).toHaveURL(/\/questions\/2$/);
	}
	expect(stored(house)).toEqual(before);
	await page.locator('#answer').fill(' 34 ');
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page).toHaveURL(/\/questions\/3$/);
});

test('a pulse or a day that cannot be is refused at its field, and nothing stored', async ({
	page,
	phone,
	house
}) => {
	await phone.screen();
	await page.goto('/bands/resting-pulse');
	const before = stored(house);
	for (const [typed, seconds, issue] of counts) {
		await page.getByLabel(`${seconds} seconds`).check();
		await page.getByLabel('Beats that you counted').fill(typed);
		await page.getByRole('button', { name: 'Add this morning' }).click();
		await refused(page, 'beats', typed, issue);
		await expect(page.getByLabel(`${seconds} seconds`)).toBeChecked();
	}
	// A date field of a browser is kinder than this: what is sent past it is checked all the same.
	for (const [on, issue] of days) {
		const answer = await phone.send('/bands/resting-pulse?/add', { beats: 68, seconds: 60, on });
		expect(answer.status(), on).toBe(400);
		expect(await answer.text(), on).toContain(issue);
	}
	expect(stored(house)).toEqual(before);
});

test('a weight with a comma is understood; other writing is refused and kept', async ({
	page,
	phone,
	house
}) => {
	await phone.screen();
	await page.goto('/bands/about-you');
	const before = stored(house);
	const weight = page.getByLabel('Weight');
	for (const typed of ['7,2,5', '72 kg', '1.000,5', '٧٢', '2', '700']) {
		await weight.fill(typed);
		await page.getByRole('button', { name: 'Keep this' }).click();
		await refused(page, 'weightKilograms', typed, /Type a number|believe/);
	}
	expect(stored(house)).toEqual(before);
	await weight.fill('72,5');
	await page.getByRole('button', { name: 'Keep this' }).click();
	await expect(page).toHaveURL(/\/bands$/);
	await page.goto('/bands/about-you');
	await expect(weight).toHaveValue('72.5');
});
