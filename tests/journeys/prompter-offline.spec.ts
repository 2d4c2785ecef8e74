import { answerDay, button, heading, open, ready, start, take, worker } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import { expect, test } from './test.ts';

/* What works in a park without a network, and for how long. Our own rules, no source. */

test.use({ viewport: { width: 360, height: 780 } });

const DAY_MS = 24 * 60 * 60 * 1000;

test('after one visit a whole outing works without a network, and arrives afterwards', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.send('/emergency-number', { number: '112', from: 'account' });
	await open(page);
	await worker(page);
	await context.setOffline(true);
	await page.goto('/prompter');
	await ready(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await page.clock.runFor(441_000);
	await button(page, 'comfortable').click();
	await button(page, '6').click();
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Steady run');
	await button(page, 'Something feels wrong').click();
	await expect(page.getByRole('link', { name: 'Call 112' })).toBeInViewport();
	await button(page, 'None of these. Go on').click();
	await page.clock.fastForward(3_000_000);
	await expect(heading(page)).toHaveText('Done');
	await button(page, 'No').first().click();
	await context.setOffline(false);
	await expect(page.getByText('waiting to be sent')).toHaveCount(0, { timeout: 15_000 });
	const kinds = (await entriesIn(phone)).map(({ kind }) => kind);
	expect(kinds.filter((kind) => kind === 'phase-done')).toHaveLength(11);
	expect(kinds.filter((kind) => kind === 'talk-answer')).toHaveLength(2);
	expect(kinds.slice(-2)).toEqual(['ended', 'pain']);
});

test('without a network kept bands are shown for fourteen days, and not by a clock set back', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	const now = Date.now();
	await page.clock.install({ time: now });
	await page.goto('/prompter');
	await expect(heading(page)).toHaveText('Which outing?');
	await worker(page);
	await context.setOffline(true);
	const openAt = async (time: number) => {
		await page.clock.setSystemTime(time);
		await page.goto('/prompter');
		await ready(page);
	};
	await openAt(now + 13 * DAY_MS);
	await expect(heading(page)).toHaveText('Which outing?');
	// A look at it writes down how late it is.
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await page.clock.runFor(6000);
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await openAt(now + 3 * DAY_MS);
	await expect(page.getByText('The clock of this phone was set back')).toBeVisible();
	await openAt(now + 15 * DAY_MS);
	await expect(page.getByText('for as long as it may')).toBeVisible();
	await context.setOffline(false);
	await expect(heading(page)).toHaveText('Which outing?');
});

test('a phone that was never here with a network says what it needs, and shows the signs', async ({
	page,
	context
}) => {
	await page.goto('/screening');
	await worker(page);
	await context.setOffline(true);
	await page.goto('/prompter');
	await ready(page);
	await expect(page.getByText('nothing of yours is kept on this phone yet')).toBeVisible();
	await page.getByRole('link', { name: 'Signs to stop' }).click();
	await expect(heading(page)).toHaveText('Signs to stop');
});

test('the installed app, opened without a network, leads to the outings and the signs that are kept', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await page.goto('/prompter');
	await expect(heading(page)).toHaveText('Which outing?');
	await worker(page);
	const manifest = await page.evaluate(() =>
		fetch('/manifest.webmanifest').then((it) => it.json())
	);
	const { start_url: startUrl } = manifest as { start_url: string };
	await context.setOffline(true);
	for (const [link, title] of [
		['Your outings, in the prompter', 'Which outing?'],
		['Signs to stop', 'Signs to stop'],
		['The urgent signs, before anything else', 'Do you have any of these right now?']
	] as const) {
		await page.goto(startUrl);
		await expect(heading(page)).toHaveText('No network right now');
		await page.getByRole('main').getByRole('link', { name: link }).click();
		await expect(heading(page)).toHaveText(title);
	}
});

test('a grant that ends in mid-outing leads to the walk that cools down, without a number', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.measureResting(68, new Date().toISOString().slice(0, 10));
	const given = page.waitForResponse('**/prompter/kept');
	await open(page);
	await expect(heading(page)).toHaveText('Which outing?');
	await worker(page);
	const { servedAt, grantEndsAt } = (await (await given).json()) as Record<string, number>;
	expect(grantEndsAt).toBe(Number(servedAt) + 14 * DAY_MS);
	await context.setOffline(true);
	// The phone heard of nobody for all but seven minutes of its fourteen days.
	await page.clock.pauseAt(Number(grantEndsAt) - 430_000);
	await page.goto('/prompter');
	await ready(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await page.clock.runFor(421_000);
	await expect(heading(page)).toHaveText('Steady run');
	await expect(page.getByText('beats a minute')).toBeVisible();
	await page.clock.runFor(15_000);
	await expect(heading(page)).toHaveText('Cool-down walk');
	await expect(page.getByText('Your result has ended')).toBeVisible();
	await expect(page.getByText('beats a minute')).toHaveCount(0);
	await page.clock.fastForward(421_000);
	await expect(heading(page)).toHaveText('Done');
});

test('a gate that closes elsewhere in mid-outing leads there too', async ({ page, phone }) => {
	await phone.screen();
	await start(page);
	await phone.send('/screening/change');
	// The phone asks every minute, and on a slow computer an answer can come too late for one of them.
	await expect(async () => {
		await page.clock.runFor(65_000);
		await expect(heading(page)).toHaveText('Cool-down walk', { timeout: 1000 });
	}).toPass({ timeout: 20_000 });
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Cool-down walk');
});

test('a phone can be cleared, and asks first while something waits', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await start(page);
	await context.setOffline(true);
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await page.getByText('What lies on this phone').click();
	await button(page, 'Clear this phone').click();
	await expect(page.getByText('They would be lost for good.')).toBeVisible();
	await button(page, 'Clear it all the same').click();
	await expect(heading(page)).toHaveText('This phone is empty now');
	const left = await page.evaluate(
		() =>
			new Promise<number[]>((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const names = [...opening.result.objectStoreNames];
					const step = opening.result.transaction(names);
					const counts = names.map((name) => step.objectStore(name).count());
					step.oncomplete = () => done(counts.map(({ result }) => result));
				};
			})
	);
	expect(left).toEqual([0, 0, 0, 0]);
});

test('forgetting the phone says what would be lost, and leaves no number on it', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await context.route('**/prompter/entries', (route) => route.abort());
	await start(page);
	await page.goto('/account');
	await expect(page.getByText('1 entry of an outing on this phone was not sent yet')).toBeVisible();
	await button(page, 'Forget me here').click();
	await expect(page).toHaveURL(/\/$/);
	expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
});

test('it can be installed', async ({ page }) => {
	await page.goto('/prompter');
	await worker(page);
	const browser = await page.context().newCDPSession(page);
	const { installabilityErrors } = await browser.send('Page.getInstallabilityErrors');
	expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
});
