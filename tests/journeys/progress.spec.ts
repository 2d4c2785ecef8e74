import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import type { EntryContent } from '../../src/lib/outing/entry.ts';
import { didAnOuting } from './past-outing.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Own outings compared with each other. Our own rules, no source.

const clean = async (page: Page) =>
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

/** Told some minutes into the brisk walk, in place of what was told of it before. */
const atSpeed = (speedKmh: number): EntryContent => ({
	kind: 'talk-answer',
	phase: 1,
	secondsIntoPhase: 400,
	talk: 'comfortable',
	effort: 5,
	speedKmh,
	afterPassage: false,
	pulse: { bpm: 128, source: 'chest-strap' }
});

test('is empty before the first outing, and shut while the gate is closed', async ({
	page,
	phone
}) => {
	await phone.screen();
	await page.goto('/past/progress');
	await expect(page.getByText('After your first outing')).toBeVisible();
	await clean(page);
	await page.getByRole('link', { name: 'Choose an outing' }).click();
	await expect(page).toHaveURL(/\/outings$/);
	await didAnOuting(phone);
	await phone.screen(leadsTo.askFirst);
	expect((await phone.get('/past/progress')).status()).toBe(303);
	await page.goto('/past');
	await expect(page.getByRole('link', { name: 'How it changes' })).toHaveCount(0);
});

test('says how many outings are still wanted, then a line with its doubt and its table', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.byTalk);
	const speeds = [5.2, 5.4, 5.5, 5.7, 5.8];
	for (const [nth, speed] of speeds.entries()) {
		const more = [atSpeed(speed)];
		await didAnOuting(phone, { kind: 'brisk-walk', daysAgo: 29 - 7 * nth, more });
		if (nth !== 1) continue;
		await page.goto('/past');
		await page.getByRole('link', { name: 'How it changes' }).click();
		await expect(page.getByText('2 of 5 outings so far')).toBeVisible();
		await expect(page.getByRole('img')).toHaveCount(0);
		await clean(page);
	}
	await page.goto('/past/progress');
	await expect(page.getByText('You go faster at the same effort: about 0.6 km/h')).toBeVisible();
	await expect(page.getByRole('img', { name: /5 outings, from 5.2 to 5.8 km\/h/ })).toBeVisible();
	const line = page.getByRole('table', { name: 'Brisk walks at effort 5 or 6' });
	await expect(line.getByRole('row')).toHaveCount(6);
	await expect(page.getByRole('table', { name: 'Your last 5 weeks' })).toBeVisible();
	await clean(page);
	// By talk: no beat, in the page or in what it was made from.
	for (const path of ['/past/progress', '/past/progress/__data.json']) {
		expect(await (await phone.get(path)).text()).not.toMatch(/\bbpm\b|\b128\b/i);
	}
	await page.getByRole('link', { name: 'Are my guesses getting closer?' }).click();
	await expect(page).toHaveURL(/\/learn\/guess$/);
});

test('compares no runs for whoever may walk or settles in', async ({ page, phone }) => {
	await phone.screen(leadsTo.mayWalk);
	await didAnOuting(phone, { kind: 'brisk-walk', more: [atSpeed(5.4)] });
	await page.goto('/past/progress');
	await expect(page.getByRole('heading', { name: 'Brisk walks' })).toBeVisible();
	await expect(page.getByText('1 of 5 outings so far')).toBeVisible();
	expect(await page.getByRole('main').innerText()).not.toMatch(/\brun/i);
});
