import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { button, heading, ready, start, whenOf } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';

/*
 * Whatever is done to the clock of a phone. The wall clock alone is set here, the steady one goes on by
 * itself (High Resolution Time standard); what it then means is our own rule, no source. The plain
 * outing: 420 s to warm up, then runs of 30 to 50 s with 110 s between, 1430 s in all.
 */

test.use({ viewport: { width: 360, height: 780 } });

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Sets the clock on the wall, and nothing else. */
async function setClock(page: Page, byMs: number) {
	const { at } = await whenOf(page);
	await page.clock.setSystemTime(at + byMs);
	await page.clock.runFor(1000);
}

/** What is left of the part that is on, in seconds. */
async function leftOf(page: Page): Promise<number> {
	const [minutes = 0, seconds = 0] = ((await page.locator('.clock').textContent()) ?? '')
		.split(':')
		.map(Number);
	return minutes * 60 + seconds;
}

/** Between two readings, as the page's time goes on while it is asked. */
async function isLeft(page: Page, seconds: number) {
	await expect(page.locator('.clock')).toHaveText(/\d:\d\d/);
	const left = await leftOf(page);
	expect(left).toBeLessThanOrEqual(seconds);
	expect(left).toBeGreaterThan(seconds - 20);
}

/** By how much the server's clock is ahead of the page's, as the phone has written it down. */
const aheadOfPage = (page: Page) =>
	page.evaluate(
		() =>
			new Promise<number>((told) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const all = opening.result.transaction('kept').objectStore('kept').getAll();
					all.onsuccess = () => {
						opening.result.close();
						told((all.result as { skewMs: number }[])[0]?.skewMs ?? 0);
					};
				};
			})
	);

const done = async (phone: Phone) =>
	(await entriesIn(phone)).flatMap((it) =>
		it.kind === 'phase-done' ? [[it.phase, it.how, it.activeSeconds]] : []
	);

const howItEnded = async (phone: Phone) =>
	(await entriesIn(phone)).flatMap((it) => (it.kind === 'ended' ? it.how : [])).join();

async function atOneMinute(page: Page, phone: Phone) {
	await phone.screen();
	await start(page);
	await page.clock.runFor(MINUTE_MS);
	await isLeft(page, 360);
}

test('set forward by an hour: it asks, goes on meanwhile, and loses no part once that is said', async ({
	page,
	phone
}) => {
	await atOneMinute(page, phone);
	await setClock(page, HOUR_MS);
	await expect(page.getByRole('heading', { name: 'Did you go on?' })).toBeVisible();
	await expect(page.getByText('went on by 60 minutes')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await expect(heading(page)).toHaveText('Warm-up walk');
	await expect(button(page, 'Something feels wrong')).toBeInViewport();
	await page.clock.runFor(30_000);
	await isLeft(page, 330);
	await button(page, 'The clock was changed. Go on from here').click();
	await expect(page.getByText('Did you go on?')).toHaveCount(0);
	await isLeft(page, 330);
	await page.clock.runFor(1_400_000);
	await expect(heading(page)).toHaveText('Done');
	const lengths = [420, 30, 110, 40, 110, 50, 110, 40, 110, 30, 420];
	await expect
		.poll(() => done(phone))
		.toEqual(lengths.map((seconds, place) => [place, 'whole', seconds]));
});

test('slept over the end and done all the same: the whole outing counts', async ({
	page,
	phone
}) => {
	await atOneMinute(page, phone);
	await setClock(page, HOUR_MS);
	await button(page, 'Yes, to the end').click();
	await expect(heading(page)).toHaveText('Done');
	await expect.poll(() => done(phone)).toHaveLength(11);
	await expect.poll(() => howItEnded(phone)).toBe('finished');
});

test('slept over the end and stopped: what was done counts, and no more', async ({
	page,
	phone
}) => {
	await atOneMinute(page, phone);
	await setClock(page, HOUR_MS);
	await button(page, 'No, I stopped').click();
	await expect(heading(page)).toHaveText('Done');
	await expect.poll(() => done(phone)).toMatchObject([[0, 'cut-short', expect.any(Number)]]);
	await expect.poll(() => howItEnded(phone)).toBe('early');
});

test('closed, and opened again an hour later: it asks, after another reload as well', async ({
	page,
	phone,
	context
}) => {
	await atOneMinute(page, phone);
	const { at } = await whenOf(page);
	const next = await context.newPage();
	await page.close();
	await next.clock.setSystemTime(at + HOUR_MS);
	await next.goto('/prompter');
	await ready(next);
	await expect(next.getByText('Did you go on?')).toBeVisible();
	// How far it was is written down every five seconds.
	await isLeft(next, 365);
	await next.clock.runFor(6000);
	await next.reload();
	await ready(next);
	await expect(next.getByText('Did you go on?')).toBeVisible();
	await button(next, 'Yes, to the end').click();
	await expect(heading(next)).toHaveText('Done');
});

test('a phone that slept for seven minutes, its steady clock too, loses no second and asks nothing', async ({
	page,
	phone
}) => {
	await phone.screen();
	await start(page);
	await setClock(page, 7 * MINUTE_MS);
	await expect(heading(page)).toHaveText('Steady run');
	await expect(page.getByText('Did you go on?')).toHaveCount(0);
	await isLeft(page, 30);
});

test('set back by an hour with a network: the server tells the time, and nothing is lost', async ({
	page,
	phone
}) => {
	await atOneMinute(page, phone);
	const asked = page.waitForRequest('**/prompter/kept');
	let isAsked = false;
	void asked.then(() => (isAsked = true));
	await setClock(page, -HOUR_MS);
	await isLeft(page, 359);
	await expect(async () => {
		if (!isAsked) await page.clock.runFor(500);
		expect(isAsked).toBe(true);
	}).toPass();
	// An answer that comes later than four seconds of the page's clock is none: it stands still meanwhile.
	await expect.poll(() => aheadOfPage(page)).toBeGreaterThan(HOUR_MS / 2);
	await page.clock.runFor(20_000);
	await expect(heading(page)).toHaveText('Warm-up walk');
	await expect(page.getByText('was set back')).toHaveCount(0);
	await expect(page.getByText('Cool-down walk')).toHaveCount(0);
});

test('set back by an hour without a network: no second is lost, numbers close, and it cools down', async ({
	page,
	phone,
	context
}) => {
	await atOneMinute(page, phone);
	await context.setOffline(true);
	await setClock(page, -HOUR_MS);
	await page.clock.runFor(20_000);
	await expect(heading(page)).toHaveText('Cool-down walk');
	await expect(page.getByText('The clock of this phone was set back')).toBeVisible();
	await isLeft(page, 420);
});

test('another time zone in the middle of an outing changes nothing', async ({
	page,
	phone,
	context
}) => {
	await atOneMinute(page, phone);
	const zoneOf = () => page.evaluate(() => new Intl.DateTimeFormat().resolvedOptions().timeZone);
	const control = await context.newCDPSession(page);
	for (const timezoneId of ['America/St_Johns', 'Pacific/Kiritimati']) {
		await control.send('Emulation.setTimezoneOverride', { timezoneId });
		expect(await zoneOf()).toBe(timezoneId);
		const before = await leftOf(page);
		await page.clock.runFor(10_000);
		await isLeft(page, before - 10);
		await expect(page.getByText('Did you go on?')).toHaveCount(0);
		await page.reload();
		await ready(page);
		await expect(heading(page)).toHaveText('Warm-up walk');
		await isLeft(page, before - 10);
	}
});
