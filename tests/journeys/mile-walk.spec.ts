import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready, screen } from './walk.ts';

// A woman of 52 years and 130 lb who took 12:45 at a pulse of 147: 38.06 mL/kg/min by the equation of
// Kline 1987 (computed).
const hers = { 'age.years': 52 };

async function fill(page: Page, changes: Readonly<Record<string, string>> = {}) {
	const typed: Record<string, string> = {
		'Time for the mile': '12:45',
		'Your pulse': '147',
		'Your weight': '130',
		...changes
	};
	for (const [label, text] of Object.entries(typed)) await page.getByLabel(label).fill(text);
	await page.getByLabel('Pounds').check();
	await page.getByLabel('Woman', { exact: true }).check();
}

const work = (page: Page) => page.getByRole('button', { name: 'Work it out' }).click();

test('a clock takes the time of the mile, right after a reload, and the numbers give the estimate and speeds', async ({
	page
}) => {
	await screen(page, hers);
	await page.goto('/bands');
	await page.clock.install();
	await page.getByRole('link', { name: 'Mile walk' }).click();
	await ready(page);
	await page.getByRole('button', { name: 'Start the mile' }).click();
	await expect(page.getByText('Something feels wrong')).toBeInViewport();
	await page.clock.fastForward(600_000);
	await page.reload();
	await ready(page);
	await expect(page.getByRole('timer')).toContainText(/^10:0\d so far$/);
	// To 12:45 and not a second on.
	const left = await page.evaluate(() => {
		const { typed } = JSON.parse(sessionStorage.getItem('mile-walk') ?? '') as {
			typed: { timed: { startedAt: number } };
		};
		return typed.timed.startedAt + 765_000 - Date.now();
	});
	await page.clock.pauseAt(new Date(await page.evaluate((ms) => Date.now() + ms, left)));
	await page.getByRole('button', { name: 'The mile is done' }).click();
	await expect(page.getByRole('timer')).toContainText('Count your beats now');
	await page.clock.runFor(16_000);
	await expect(page.getByLabel('Your pulse')).toBeFocused();
	await expect(page.getByLabel('Time for the mile')).toHaveValue('12:45');
	await page.clock.resume();
	await fill(page);
	await work(page);
	await expect(page.getByText('about 38 mL/kg/min, give or take 5')).toBeVisible();
	expect(await page.evaluate(() => sessionStorage.getItem('mile-walk'))).toBeNull();

	await page.goto('/bands');
	await expect(page.getByText('Speeds come from your mile walk of')).toBeVisible();
	await page.goto('/bands/mile-walk');
	await page.getByRole('button', { name: 'Delete this mile walk' }).click();
	await expect(page.getByText('mL/kg/min')).toHaveCount(0);
	await page.goto('/bands');
	await expect(page.getByText('Speeds come from')).toHaveCount(0);
});

test('what cannot be is told at its field, and what was typed stays', async ({ page }) => {
	await screen(page, hers);
	await page.goto('/bands/mile-walk');
	await ready(page);
	for (const [label, field, typed, issue] of [
		['Time for the mile', 'time', '12.45', 'Write minutes and seconds'],
		['Time for the mile', 'time', '7:10', 'Was there a run in it?'],
		['Time for the mile', 'time', '55:00', 'a stroll'],
		['Your pulse', 'pulse', '37', 'A pulse is for a full minute'],
		['Your pulse', 'pulse', '24.5', 'whole number'],
		['Your weight', 'weight', '59', 'Is the unit right?'],
		['Your weight', 'weight', 'x', 'Type a number']
	] as const) {
		await fill(page, { [label]: typed });
		await work(page);
		await ready(page);
		await expect(page.locator(`#${field}-issue`)).toContainText(issue);
		await expect(page.getByLabel(label)).toHaveValue(typed);
		await expect(page.getByLabel('Pounds')).toBeChecked();
	}
	await page.reload();
});

test('whoever would rather not say a sex gets the lower number, and reads that it is', async ({
	phone,
	page
}) => {
	await screen(page, hers);
	const mile = { weight: '130', weightUnit: 'lb', time: '12:45', read: 'minute', pulse: '147' };
	await phone.lead('/bands/mile-walk?/add', { ...mile, sex: 'man' });
	await page.goto('/bands/mile-walk');
	await expect(page.getByText('about 44 mL/kg/min')).toBeVisible();
	await phone.lead('/bands/mile-walk?/add', { ...mile, sex: 'none' });
	await page.goto('/bands/mile-walk');
	await expect(page.getByText('about 38 mL/kg/min')).toBeVisible();
	await expect(page.getByText('the lower of two numbers')).toBeVisible();
	const held = await (await phone.get('/account/export')).text();
	expect(held).toContain('"minutes": 12.75');
});

const closed = {
	mayWalk: ['not for you for now', true],
	settlingIn: ['not for you for now', true],
	byTalk: ['pulse numbers could be wrong', false]
} as const;

for (const [result, [why, hasWalkCheck]] of Object.entries(closed)) {
	test(`there is none, and a form that was forged keeps nothing: ${result}`, async ({
		page,
		phone
	}) => {
		await screen(page, leadsTo[result as keyof typeof closed]);
		await page.goto('/bands');
		await expect(page.getByRole('link', { name: 'Mile walk' })).toHaveCount(0);
		const mile = { weight: '60', weightUnit: 'kg', sex: 'woman', time: '13:00' };
		await phone.send('/bands/mile-walk?/add', { ...mile, read: 'minute', pulse: '140' });
		expect(await (await phone.get('/account/export')).text()).toContain('"mileWalk": null');
		await page.goto('/bands/mile-walk');
		await expect(page.getByText(why)).toBeVisible();
		await expect(page.getByRole('textbox')).toHaveCount(0);
		await expect(page.getByRole('link', { name: 'To the walk check' })).toHaveCount(
			hasWalkCheck ? 1 : 0
		);
	});
}

test('there is none under 30, and none with a limit from a care team', async ({ page, phone }) => {
	await screen(page, { 'age.years': 29 });
	await page.goto('/bands/mile-walk');
	await expect(page.getByText('from 30 to 69 years')).toBeVisible();
	await phone.screen(leadsTo.askFirst);
	await phone.send('/screening/advice?/record', {
		role: 'doctor',
		covers: 'R-SIGN-ANKLES',
		scope: 'walkrun',
		limitBpm: '150',
		givenOn: todayIn('Etc/UTC')
	});
	await page.goto('/bands/mile-walk');
	await expect(page.getByText(/not for you for now|limit from your care team/)).toBeVisible();
	await expect(page.getByRole('textbox')).toHaveCount(0);
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	test('the mile is typed in', async ({ page, phone }) => {
		await phone.screen({ ...hers });
		await page.goto('/bands/mile-walk');
		await expect(page.getByRole('button', { name: 'Start the mile' })).toHaveCount(0);
		await fill(page);
		await work(page);
		await expect(page.getByText('about 38 mL/kg/min')).toBeVisible();
	});
});
