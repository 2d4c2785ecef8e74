import { chromium, type Page } from '@playwright/test';
import { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo, measureResting, ready } from './walk.ts';

/*
 * A page that was seen must not come back after it was shut: neither from the browser's cache of
 * answers, nor from its memory of whole pages.
 */

const HIDDEN = '126–140';

async function seeBands(page: Page, phone: Phone) {
	await phone.screen();
	await measureResting(page, 68);
	await page.goto('/bands');
	await ready(page);
	await expect(page.getByText(HIDDEN).first()).toBeVisible();
}

async function expectGone(page: Page) {
	await expect(page.getByText(HIDDEN)).toHaveCount(0);
	await expect(page.getByText('bpm')).toHaveCount(0);
}

test('back after a health change shows no bands', async ({ page, phone }) => {
	await seeBands(page, phone);
	await page.goto('/screening/change');
	await page.getByRole('button', { name: 'End my result' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	for (let steps = 0; steps < 3; steps += 1) {
		await page.goBack();
		await expectGone(page);
	}
});

test('each link asks the server for a whole page, and so does the way back', async ({
	page,
	phone
}) => {
	await seeBands(page, phone);
	await page.getByRole('link', { name: 'Result' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await phone.screen(leadsTo.askFirst);
	await page.goBack();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first');
	await expectGone(page);
});

for (const path of ['/bands', '/screening/result', '/bands/resting-pulse']) {
	test(`${path} asks again when a browser shows it from its memory`, async ({ page, phone }) => {
		await seeBands(page, phone);
		await page.goto(path);
		await phone.screen(leadsTo.askFirst);
		await page.evaluate(() => {
			dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
		});
		await expect(page).toHaveURL(/\/screening\/result$/);
		await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first');
		await expectGone(page);
	});
}

test('in a browser that keeps whole pages, the way back leads to the result', async ({
	launchOptions,
	house
}) => {
	const browser = await chromium.launch({
		...launchOptions,
		ignoreDefaultArgs: ['--disable-back-forward-cache']
	});
	const page = await browser.newPage({ baseURL: house.url });
	const phone = new Phone(page.request, house.url);
	// A page that a worker took over while it was open is not kept.
	await page.goto('/screening');
	await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
	await seeBands(page, phone);
	await page.goto('/methods');
	await phone.screen(leadsTo.askFirst);
	// The test library waits for ever for a page that comes from memory; the browser itself does not.
	const direct = await page.context().newCDPSession(page);
	const evaluate = async (expression: string) =>
		String((await direct.send('Runtime.evaluate', { expression })).result.value);
	await evaluate('history.back()');
	await expect.poll(() => evaluate('location.pathname').catch(String)).toBe('/screening/result');
	await expect.poll(() => evaluate('document.body.innerText').catch(String)).toContain('Ask first');
	expect(await evaluate('document.body.innerText')).not.toContain(HIDDEN);
	await browser.close();
});
