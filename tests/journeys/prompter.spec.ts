import { AxeBuilder } from '@axe-core/playwright';
import type { KeptForRunner } from '../../src/lib/outing/kept.ts';
import { answerDay, button, heading, keptIs, open, ready, start, take } from './an-outing.ts';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

/*
 * An outing in the hand, with the clock of the page in ours. Times are added up from the plain
 * outing: 420 s to warm up, then runs of 30, 40, 50, 40, 30 s with 110 s of walking between.
 */

test.use({ viewport: { width: 360, height: 780 } });

test('a whole outing, phase by phase, to the end and to what counts afterwards', async ({
	page,
	phone
}) => {
	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	await start(page);
	await page.clock.runFor(421_000);
	await expect(heading(page)).toHaveText('Steady run');
	await expect(page.locator('.clock')).toHaveText('0:29');
	await expect(page.getByRole('img', { name: /Steady run: \d+ to \d+ beats/ })).toBeVisible();
	await page.clock.runFor(20_000);
	await button(page, 'broke off').click();
	await expect(page.getByText('Slow to a walk now.')).toBeVisible();
	await page.clock.runFor(10_000);
	await expect(heading(page)).toHaveText('Recovery walk');
	await button(page, '30 s more').click();
	await expect(page.locator('.clock')).toHaveText('2:19');
	await button(page, 'Skip this part').click();
	await expect(heading(page)).toHaveText('Steady run');
	await page.clock.fastForward(2_000_000);
	await expect(heading(page)).toHaveText('Done');
	await button(page, 'Yes, new pain').click();
	await button(page, 'Knee').click();
	await expect(page.getByText('no running until it is gone')).toBeVisible();
});

test('whoever settled in not long ago may skip a run, and no walk', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await keptIs(context, { longestRunSeconds: 30 });
	await start(page);
	await expect(button(page, 'Skip this part')).toHaveCount(0);
	await page.clock.runFor(421_000);
	await expect(heading(page)).toHaveText('Steady run');
	await button(page, 'Skip this part').click();
	await expect(heading(page)).toHaveText('Recovery walk');
	await expect(button(page, '30 s more')).toBeVisible();
	await expect(button(page, 'Skip this part')).toHaveCount(0);
});

test('a screen that is locked for seven minutes, a reload and a kill lose no second', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await start(page);
	await page.clock.runFor(10_000);
	await page.clock.fastForward(420_000);
	await expect(heading(page)).toHaveText('Steady run');
	await expect(page.locator('.clock')).toHaveText('0:20');
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Steady run');
	await button(page, 'Pause').click();
	await expect(page.getByText('Paused')).toBeVisible();
	const left = await page.locator('.clock').textContent();
	await page.clock.fastForward(600_000);
	await expect(page.locator('.clock')).toHaveText(left ?? '');

	const again = await context.newPage();
	await page.close();
	await again.goto('/prompter');
	await ready(again);
	await expect(heading(again)).toHaveText('Steady run');
	await expect(again.locator('.clock')).toHaveText(left ?? '');
	await button(again, 'Go on').focus();
	await again.keyboard.press('Enter');
	await expect(again.getByText('Paused')).toHaveCount(0);
});

test('a stop sign stops the clock, shuts the phone without a network, and the gate once sent', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await start(page);
	await context.setOffline(true);
	await button(page, 'Something feels wrong').click();
	await expect(heading(page)).toHaveText('Stop and stand still');
	await expect(page.getByRole('link', { name: '112', exact: true })).toBeVisible();
	await button(page, 'One of the signs to call').click();
	await expect(heading(page)).toHaveText('No more today');
	await expect(page.getByText('entries are waiting to be sent')).toBeVisible();
	await context.setOffline(false);
	await expect(page.getByText('We have kept a note')).toBeVisible();
	expect((await phone.get('/bands')).status()).toBe(303);
	expect(await phone.result()).toContain('Ask first');
});

test('something wrong that was no sign: on again, or to the walk that cools down', async ({
	page,
	phone
}) => {
	await phone.screen();
	await start(page);
	await button(page, 'Something feels wrong').click();
	await page.clock.fastForward(60_000);
	await button(page, 'None of these').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await expect(page.locator('.clock')).toHaveText(/^7:00|6:59$/);
	await button(page, 'Something feels wrong').click();
	await button(page, 'Sharp, new or growing pain').click();
	await expect(heading(page)).toHaveText('Cool-down walk');
	await page.clock.fastForward(430_000);
	await expect(page.getByText('no running until it is gone')).toBeVisible();
});

test('each careful answer of the day closes, and not well keeps it shut for the day', async ({
	page,
	phone
}) => {
	await phone.screen();
	await open(page);
	await take(page);
	await answerDay(page, { change: 'Yes' });
	await expect(page.getByText('your result no longer fits')).toBeVisible();
	await page.reload();
	await ready(page);
	await take(page);
	await answerDay(page, { well: 'No' });
	await expect(heading(page)).toHaveText('Not today');
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Not today');
	await expect(page.getByRole('link', { name: 'Signs to stop' }).first()).toBeVisible();
});

test('a new sign before the start keeps it shut for the day, whatever else was said', async ({
	page,
	phone
}) => {
	await phone.screen();
	await open(page);
	await take(page);
	await answerDay(page, { sign: 'Yes' });
	await expect(page.getByRole('link', { name: 'My health changed' })).toBeVisible();
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Not today');
	await expect(page.getByRole('button', { name: /^Take this one/ })).toHaveCount(0);
});

test('by talk: no beat on the page or in its data; settling in: no run', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.byTalk);
	await start(page);
	await expect(page.getByText('beats a minute')).toHaveCount(0);
	const kept = (await (await phone.get('/prompter/kept')).json()) as KeptForRunner<{
		pulse: unknown;
	}>;
	expect(kept).toMatchObject({ pulseOn: false, axis: null, careTeamLimitBpm: null });
	expect(kept.phases.filter(({ pulse }) => pulse !== null)).toEqual([]);
});

test('settling in: a brisk walk, the passage read once, and the walk counts', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.settlingIn);
	await start(page);
	await page.clock.fastForward(420_000);
	await expect(heading(page)).toHaveText('Brisk walk');
	await page.clock.fastForward(121_000);
	await expect(page.getByText('Read this aloud')).toBeVisible();
	await page.clock.fastForward(2_000_000);
	await expect(heading(page)).toHaveText('Done');
	await expect(page.getByText('waiting to be sent')).toHaveCount(0);
	await page.goto('/bands');
	await expect(page.getByText('at least 5 walks')).toBeVisible();
});

test('lying or standing, everything that a thumb needs is on the screen', async ({
	page,
	phone
}) => {
	await phone.screen();
	await start(page);
	for (const size of [
		{ width: 360, height: 780 },
		{ width: 740, height: 360 }
	]) {
		await page.setViewportSize(size);
		await expect(page.locator('.clock')).toBeInViewport({ ratio: 1 });
		await expect(button(page, 'Pause')).toBeInViewport({ ratio: 1 });
		await expect(button(page, 'Something feels wrong')).toBeInViewport({ ratio: 1 });
		const wide = await page.locator('section').evaluate((it) => it.scrollWidth - it.clientWidth);
		expect(wide).toBe(0);
		expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	}
});
