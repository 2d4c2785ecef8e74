import type { Page } from '@playwright/test';
import { button, heading, start } from '../../journeys/an-outing.ts';
import { todayIn } from '../../journeys/days.ts';
import { expect, test } from '../../journeys/test.ts';
import { quantile, row } from './frame-table.ts';
import { framesDuring } from './main-thread.ts';

/** A phone that is four times slower than this machine. */
const SLOWER = 4;
/**
 * Half of a frame at 60 Hz, on top of what a bare clock takes in the same minute on the same machine:
 * slowed down, that alone can take as much. Our own limit, no source.
 */
const MUST_REACH_MS = 8;
const WATCHED_MS = 20_000;
/** A frame in which nothing but the machine's own housekeeping was done says nothing. */
const IDLE_MS = 0.3;

test.use({ viewport: { width: 360, height: 780 } });

/** A clock that is written out four times a second, and nothing else. */
const bareClock = `<p style="font-size: 36vw"></p><script>
	const began = performance.now();
	setInterval(() => {
		document.querySelector('p').textContent = ((performance.now() - began) / 1000).toFixed(0);
	}, 250);
</script>`;

async function watched(page: Page) {
	const client = await page.context().newCDPSession(page);
	await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
	const frames = await framesDuring(page, () => page.waitForTimeout(WATCHED_MS));
	await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
	await client.detach();
	return frames.filter(({ workMs }) => workMs > IDLE_MS);
}

test('an outing leaves a frame its time on a phone that is four times slower', async ({
	page,
	phone,
	context
}) => {
	const plain = await context.newPage();
	await plain.setContent(bareClock);
	const bare = await watched(plain);
	await plain.close();

	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	await start(page);
	await page.clock.resume();
	await button(page, 'Skip this part').click();
	await expect(heading(page)).toHaveText('Steady run');
	// The last seconds of a run, its talk question, and the first of the walk after it.
	const run = await watched(page);
	await button(page, 'Skip this part').click();
	const walk = await watched(page);

	console.table([
		row('a bare clock, for comparison', bare),
		row('a run, with its talk question', run),
		row('the walk after it', walk)
	]);
	for (const frames of [run, walk]) {
		expect(frames.length).toBeGreaterThan(WATCHED_MS / 2000);
		expect(quantile(frames, 0.95) - quantile(bare, 0.95)).toBeLessThan(MUST_REACH_MS);
	}
});
