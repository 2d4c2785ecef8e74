import type { Page } from '@playwright/test';
import { answerDay, button, heading, open, ready, take, worker } from './an-outing.ts';
import { plusDays, todayIn } from './days.ts';
import { expect, test } from './test.ts';

/* What is said once, and what is forgotten. Our own rules, no source. */

test.use({ viewport: { width: 360, height: 780 } });

interface NotWell {
	readonly runnerKey: string;
	readonly on: string;
	readonly timeZone: string;
}

/** What this phone holds of who was not well; with a day, as if that had been said on it. */
const notWellHere = (page: Page, on: string | null = null) =>
	page.evaluate(
		(day) =>
			new Promise<NotWell[]>((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const step = opening.result.transaction('notWell', 'readwrite');
					const all = step.objectStore('notWell').getAll();
					all.onsuccess = () => {
						const found = all.result as NotWell[];
						if (day !== null) {
							for (const one of found) step.objectStore('notWell').put({ ...one, on: day });
						}
						step.oncomplete = () => {
							opening.result.close();
							done(found);
						};
					};
				};
			}),
		on
	);

test('that somebody was not well is gone the next day, whichever page is opened then', async ({
	page,
	phone
}) => {
	await phone.screen();
	await page.goto('/prompter');
	await ready(page);
	await worker(page);
	await take(page);
	await answerDay(page, { well: 'No' });
	await expect(heading(page)).toHaveText('Not today');
	const [said] = await notWellHere(page);
	expect(said).toMatchObject({ on: todayIn(said?.timeZone ?? 'UTC') });
	// On the same day it stands, on a page without any script of its own as well.
	await page.goto('/privacy');
	await page.goto('/safety');
	expect(await notWellHere(page)).toHaveLength(1);
	await notWellHere(page, plusDays(said?.on ?? '', -1));
	await page.goto('/privacy');
	await expect.poll(async () => (await notWellHere(page)).length).toBe(0);
});

test('a phone on which nothing was kept is left so by whatever page is opened', async ({
	page
}) => {
	await page.goto('/screening');
	await worker(page);
	await page.goto('/safety');
	await page.goto('/privacy');
	expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
});

test('the treadmill cautions have to be read the first time, and stand folded the second', async ({
	page,
	phone
}) => {
	await phone.screen();
	await open(page);
	const toReady = async () => {
		await take(page);
		await answerDay(page);
		await page.getByLabel('On a treadmill').check();
	};
	await toReady();
	const caution = page.getByText('Never step off a moving belt.');
	await expect(caution).toBeVisible();
	await button(page, 'Start').click();
	await expect(page.getByText('Read the cautions first.')).toBeVisible();
	await expect(heading(page)).toHaveText('The plain outing');
	await page.getByLabel('I have read this').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await page.reload();
	await ready(page);
	await toReady();
	await expect(caution).toBeHidden();
	await expect(page.getByLabel('I have read this')).toHaveCount(0);
	await page.getByText('On a treadmill', { exact: true }).last().click();
	await expect(caution).toBeVisible();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
});

test('the phone is asked to keep what is written for good, in the tap that starts and not before', async ({
	page,
	phone
}) => {
	await page.addInitScript(() => {
		const asked: boolean[] = [];
		Object.assign(window, { asked });
		const real = StorageManager.prototype.persist;
		StorageManager.prototype.persist = function (this: StorageManager) {
			asked.push(navigator.userActivation.isActive);
			return real.call(this);
		};
	});
	await phone.screen();
	await open(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	const asked = () => page.evaluate(() => (window as never as { asked: boolean[] }).asked);
	expect(await asked()).toEqual([]);
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	expect(await asked()).toEqual([true]);
});
