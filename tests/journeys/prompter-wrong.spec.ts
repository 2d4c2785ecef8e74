import type { Page } from '@playwright/test';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { answerDay, button, heading, open, ready, start, take, usualIs } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import { expect, test } from './test.ts';

/* "Something feels wrong" is in reach in each state of the prompter. Our own rule, no source. */

test.use({ viewport: { width: 360, height: 780 } });

const HOUR_MS = 60 * 60 * 1000;

/** Before and after an outing it unfolds, with numbers to call and the way to the urgent signs. */
async function isOnPage(page: Page) {
	const word = page.locator('summary', { hasText: 'Something feels wrong' });
	await word.click();
	await expect(page.getByRole('link', { name: 'Call 112' }).last()).toBeVisible();
	await expect(page.getByRole('link', { name: 'I have an urgent sign' })).toBeVisible();
	await word.click();
}

/** In an outing, and until its page is left, it is in sight wherever somebody has scrolled to. */
async function isInSight(page: Page) {
	for (const to of [0, 100_000]) {
		await page.evaluate((top) => scrollTo(0, top), to);
		await expect(button(page, 'Something feels wrong')).toBeInViewport({ ratio: 1 });
	}
}

test('it is there before an outing: closed, which outing, the questions, not today, ready', async ({
	page,
	phone
}) => {
	await open(page);
	await expect(heading(page)).toHaveText('The prompter is closed');
	await isOnPage(page);
	await phone.screen();
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Which outing?');
	await isOnPage(page);
	await take(page);
	await expect(heading(page)).toHaveText('Before you start');
	await isOnPage(page);
	await answerDay(page);
	await page.getByLabel('On a treadmill').check();
	await expect(heading(page)).toHaveText('The plain outing');
	await isOnPage(page);
	for (const answer of [{ change: 'Yes' }, { sign: 'Yes' }]) {
		await page.reload();
		await ready(page);
		await take(page);
		await answerDay(page, answer);
		await expect(heading(page)).toHaveText('Not today');
		await isOnPage(page);
	}
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Not today');
	await isOnPage(page);
});

test('it is in sight throughout an outing: going, paused, asked, answered, reading, ending, over', async ({
	page,
	phone,
	context
}) => {
	const parts = [plainPhase('brisk-walk', 200), plainPhase('cool-down-walk', 60)];
	await usualIs(context, { name: 'A walk', parts });
	await phone.screen();
	await open(page);
	await take(page, 'A walk');
	await answerDay(page);
	await page.getByLabel('On a treadmill').check();
	await page.getByLabel('I have read this').check();
	await button(page, 'Start').click();
	await isInSight(page);
	await button(page, 'Pause').click();
	await isInSight(page);
	await button(page, 'Go on').click();
	await button(page, 'End early').click();
	await isInSight(page);
	await button(page, 'Stay in the outing').click();
	await page.clock.runFor(122_000);
	await expect(page.getByText('Read this aloud')).toBeVisible();
	await isInSight(page);
	await page.clock.runFor(30_000);
	await button(page, 'comfortable').click();
	await expect(page.getByText('How hard, 0 to 10?')).toBeVisible();
	await isInSight(page);
	await page.clock.runFor(110_000);
	await expect(heading(page)).toHaveText('Done');
	await isInSight(page);
});

test('after the end it shows the signs and the number, and a sign shuts phone and gate', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await endedNow(page);
	await context.setOffline(true);
	await button(page, 'Something feels wrong').click();
	await expect(heading(page)).toHaveText('Stop and stand still');
	await expect(heading(page)).toBeFocused();
	await expect(page.getByRole('link', { name: '112', exact: true })).toBeVisible();
	await button(page, 'One of the signs to see a doctor today').click();
	await expect(heading(page)).toHaveText('No more today');
	await isOnPage(page);
	await context.setOffline(false);
	await expect(page.getByText('We have kept a note')).toBeVisible();
	expect((await phone.get('/bands')).status()).toBe(303);
	expect(await phone.result()).toContain('Ask first');
});

test('after the end, nothing after all leads back; pain is taken as pain; each is written once', async ({
	page,
	phone
}) => {
	await phone.screen();
	await endedNow(page);
	await button(page, 'Something feels wrong').click();
	await button(page, 'None of these').click();
	await expect(heading(page)).toHaveText('Done');
	await button(page, 'Something feels wrong').click();
	await button(page, 'Sharp, new or growing pain').click();
	await expect(page.getByText('no running until it is gone')).toBeVisible();
	const said = async () =>
		(await entriesIn(phone)).filter(({ kind }) => kind === 'halted' || kind === 'something-wrong');
	await expect
		.poll(said)
		.toMatchObject([
			{ kind: 'halted' },
			{ kind: 'something-wrong', sign: 'none' },
			{ kind: 'halted' },
			{ kind: 'something-wrong', sign: 'pain' }
		]);
	expect((await phone.get('/bands')).status()).toBe(200);
});

test('after the end, pressed and never explained: asked again when the page opens, a sign after six hours', async ({
	page,
	phone
}) => {
	await phone.screen();
	await endedNow(page);
	await button(page, 'Something feels wrong').click();
	await expect(heading(page)).toHaveText('Stop and stand still');
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Stop and stand still');
	await page.clock.fastForward(6 * HOUR_MS + 1000);
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('No more today');
	await expect(page.getByText('We have kept a note')).toBeVisible();
	expect(await phone.result()).toContain('Ask first');
});

async function endedNow(page: Page) {
	await start(page);
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
}
