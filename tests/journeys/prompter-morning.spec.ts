import type { Page } from '@playwright/test';
import { answerDay, button, heading, ready, take } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';

/* The morning after is asked about once, wherever it is answered. Our own rules, no source. */

test.use({ viewport: { width: 360, height: 780 } });

const HOUR_MS = 60 * 60 * 1000;

/** An outing of yesterday, done and sent, and this phone on the morning after. */
async function yesterday(page: Page, phone: Phone): Promise<string> {
	await phone.screen();
	const now = Date.now();
	await page.clock.install({ time: now - 26 * HOUR_MS });
	await page.goto('/prompter');
	await ready(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await expect(page.getByText('waiting to be sent')).toHaveCount(0);
	await expect
		.poll(async () => (await entriesIn(phone)).map(({ kind }) => kind))
		.toEqual(expect.arrayContaining(['ended', 'phase-done']));
	await page.clock.setSystemTime(now);
	return (await entriesIn(phone))[0]?.outingRunId ?? '';
}

const question = (page: Page) => page.getByText('The morning after: any new or growing pain?');

async function again(page: Page) {
	await page.goto('/prompter');
	await ready(page);
	await expect(heading(page)).toHaveText('Which outing?');
}

test('on the phone that did the outing, and then nowhere again', async ({ page, phone }) => {
	await yesterday(page, phone);
	await again(page);
	await expect(question(page)).toBeVisible();
	await button(page, 'No').click();
	await expect(page.getByText('waiting to be sent')).toHaveCount(0);
	await again(page);
	await expect(question(page)).toHaveCount(0);
	await page.goto('/past');
	await expect(page.getByText('any new or growing pain')).toHaveCount(0);
});

test('not by the phone where it was answered among the past outings', async ({ page, phone }) => {
	const run = await yesterday(page, phone);
	await phone.lead('/past?/morning', { run, level: 'none' });
	await again(page);
	await expect(question(page)).toHaveCount(0);
});
