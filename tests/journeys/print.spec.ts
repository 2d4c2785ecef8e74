import { inflateSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready, type Answers } from './walk.ts';

/** Eight reasons of every kind, on the longest plan. Our own, invented. */
const eightReasons: Answers = {
	'age.years': 71,
	'plan.effort': 'hard',
	'act.days': 1,
	'act.months': 'lt3',
	'act.hard': 'no',
	'signs.other': ['ankles', 'legpain', 'tired'],
	'chest.pain': ['exercise'],
	'joint.sore': 'yes',
	'joint.now': ['limits'],
	'limits.set': ['watched'],
	'recent.event': ['surgery'],
	'ill.heart': 'yes'
};

const papers = ['A4', 'Letter'] as const;

/** How many pages a PDF has: its page objects, also in compressed object streams. */
function pagesOf(pdf: Buffer): number {
	const parts = [pdf.toString('latin1')];
	for (const { index = 0, 0: mark } of parts[0]?.matchAll(/stream\r?\n/g) ?? []) {
		try {
			parts.push(inflateSync(pdf.subarray(index + mark.length)).toString('latin1'));
		} catch {
			// A picture, a font, or the end of a stream.
		}
	}
	return parts.join('\n').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

const print = async (page: Page, format: (typeof papers)[number]) =>
	pagesOf(await page.pdf({ format, preferCSSPageSize: false }));

test('the page for the doctor is one sheet, on either paper, also with eight reasons', async ({
	page,
	phone
}) => {
	await phone.screen(eightReasons);
	await page.goto('/screening/doctor');
	expect(await page.locator('.reasons li').count()).toBeGreaterThanOrEqual(8);
	await page.getByLabel('Name, for the print only').fill('Gwen Ashworth-Llewellyn');
	for (const paper of papers) expect(await print(page, paper), paper).toBe(1);
});

test('the doctor reads what was left ticked, and none of the buttons', async ({ page, phone }) => {
	await phone.screen(eightReasons);
	await page.goto('/screening/doctor');
	await page.getByLabel('Your ankles swell up.').uncheck();
	await page.emulateMedia({ media: 'print' });
	await expect(page.getByText('Your ankles swell up.')).toBeHidden();
	await expect(page.getByText('You feel much more tired than normal.')).toBeVisible();
	await expect(page.getByRole('heading', { name: 'Reply' })).toBeVisible();
	await expect(page.getByRole('link')).toHaveCount(0);
	await expect(page.getByRole('button')).toHaveCount(0);
});

test('a button prints the page for the doctor; without script the words say how', async ({
	page,
	phone,
	browser,
	baseURL
}) => {
	await phone.screen(leadsTo.askFirst);
	await page.goto('/screening/doctor');
	await ready(page);
	await page.evaluate(() => {
		window.print = () => (document.title = 'it prints');
	});
	await page.getByRole('button', { name: 'Print' }).click();
	await expect(page).toHaveTitle('it prints');

	const plain = await browser.newContext({ javaScriptEnabled: false, baseURL });
	await plain.addCookies(await page.context().cookies());
	const asked = await plain.newPage();
	await asked.goto('/screening/doctor');
	await expect(asked.getByText('Print it from the menu of your browser.')).toBeVisible();
	await expect(asked.getByRole('button', { name: 'Print' })).toHaveCount(0);
	await plain.close();
});

test('reasons that advice covers still stand on the page for the doctor, with what remains', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.askFirst);
	const given = { role: 'doctor', covers: 'R-SIGN-ANKLES', limitBpm: '', givenOn: todayIn('UTC') };
	await phone.send('/screening/advice?/record', { ...given, scope: 'walkrun' });
	await page.goto('/screening/doctor');
	const reason = page.getByRole('listitem').filter({ hasText: 'Your ankles swell up.' });
	await expect(page.getByText('Advice already covers:')).toBeVisible();
	await expect(reason).toBeVisible();
	await expect(page.getByText('Nothing else is left that needs advice.')).toBeVisible();
	await expect(page.getByText('There is no reason on file')).toHaveCount(0);
	for (const paper of papers) expect(await print(page, paper), paper).toBe(1);

	await phone.send('/screening/advice?/record', { ...given, scope: 'none' });
	await page.goto('/screening/doctor');
	await expect(page.getByText('advice on file says nothing yet')).toBeVisible();
});

test('the signs to stop are one sheet to pin up, the bands and a lesson two', async ({
	page,
	phone
}) => {
	await phone.screen();
	await phone.measureResting(68, todayIn('UTC'));
	for (const paper of papers) {
		await page.goto('/safety');
		expect(await print(page, paper), `signs to stop on ${paper}`).toBe(1);
		await page.goto('/bands');
		expect(await print(page, paper), `bands on ${paper}`).toBe(2);
		for (const [sheet, pages] of [
			['weather', 1],
			['outing', 1],
			['health', 2]
		] as const) {
			await page.goto(`/safety/${sheet}`);
			expect(await print(page, paper), `${sheet} on ${paper}`).toBe(pages);
		}
		await page.goto('/learn/teach');
		expect(await print(page, paper), `the lesson and its texts on ${paper}`).toBe(2);
	}
});
