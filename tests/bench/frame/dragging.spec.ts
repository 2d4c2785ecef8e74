import type { Locator, Page } from '@playwright/test';
import { expect, test } from '../../journeys/lantern-street.ts';
import { lengthSteps } from '../../../src/lib/outing/length-steps.ts';
import { fillGroup } from './full-group.ts';
import { quantile, row } from './frame-table.ts';
import { framesDuring, type Frame } from './main-thread.ts';

const RUNNERS = 200;
const PHASES = 40;
/** A frame of a screen at 60 Hz. Our own limit, no source. */
const MUST_REACH_MS = 16;
/** Two frames, for the one in which a hand takes hold. Our own limit, no source. */
const FIRST_MUST_REACH_MS = 32;
const MOVES = 150;
/** As many as the slider of a length has. */
const STOPS = lengthSteps.length - 1;

test('dragging a length leaves a frame its time', async ({ page, lantern, house }) => {
	await fillGroup(house, lantern.groupId, RUNNERS);
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	const phases = Array.from({ length: PHASES }, (_, n) => ({
		[`parts-${n}-kind`]: n % 2 === 0 ? 'recovery-walk' : 'steady-run',
		[`parts-${n}-seconds`]: n % 2 === 0 ? '1:50' : '0:50'
	}));
	const outing = Object.assign({ name: 'Outing 12', revision: '1' }, ...phases);
	await lantern.coach.lead(`${path}?/save`, outing);

	await page.setViewportSize({ width: 1280, height: 800 });
	await page.setContent(`<input type="range" max="${STOPS}" style="width: 30rem">`);
	const bare = await framesDuring(page, () => dragged(page, page.locator('input')));
	const sorting = await page.evaluate(sortMs, RUNNERS * 161);

	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByRole('img', { name: /Expected pulse/ })).toBeVisible();
	await page.evaluate(atRest);
	const slider = page.getByLabel('Length of phase 2', { exact: true });
	const editor = await framesDuring(page, () => dragged(page, slider));

	const [first, ...later] = busy(editor);
	if (!first) throw new Error('no frame');
	console.table([
		row('a bare slider, for comparison', busy(bare)),
		row(`a length in ${PHASES} phases, for ${RUNNERS} runners: the first frame`, [first]),
		row('all frames after it', later)
	]);
	console.log(`sorting ${RUNNERS * 161} numbers in this browser: ${sorting.toFixed(1)} ms`);
	expect(editor.filter(({ tookInput }) => tookInput).length).toBeGreaterThan(MOVES / 2);
	expect(quantile(later, 1)).toBeLessThan(MUST_REACH_MS);
	// The hand takes hold: the slider is focused, and much of the page's script runs for the first time.
	expect(first.workMs).toBeLessThan(FIRST_MUST_REACH_MS);
});

/**
 * From the moment on in which the hand takes hold, before which the browser begins to trace: frames in
 * which it moved something, and any other that did much. Between two of these a browser may tidy up
 * for a while, bit by bit, as nothing is waiting: there the longest bit counts.
 */
function busy(frames: readonly Frame[]): readonly Frame[] {
	return frames
		.slice(frames.findIndex(({ tookInput }) => tookInput))
		.map((frame) => (frame.tookInput ? frame : { ...frame, workMs: frame.longestTaskMs }))
		.filter(({ tookInput, workMs }) => tookInput || workMs > MUST_REACH_MS / 2);
}

/** To and fro over the slider, by a mouse that moves all the while. */
async function dragged(page: Page, slider: Locator): Promise<void> {
	await slider.scrollIntoViewIfNeeded();
	const box = await slider.boundingBox();
	if (!box) throw new Error('no slider');
	const [left, y] = [box.x + 10, box.y + box.height / 2];
	const perStop = (box.width - 20) / STOPS;
	await page.mouse.move(left, y);
	await page.mouse.down();
	for (let move = 0; move < MOVES; move++) {
		const stop = Math.abs(((move + STOPS / 2) % STOPS) - STOPS / 2);
		await page.mouse.move(left + stop * perStop, y);
		await page.evaluate(() => new Promise(requestAnimationFrame));
	}
	await page.mouse.up();
	// What is drawn once the hand is still counts too.
	await page.waitForTimeout(500);
}

/** Waits until the page has been at rest ten times. */
async function atRest(): Promise<void> {
	for (let rest = 0; rest < 10; rest++) {
		await new Promise((done) => requestIdleCallback(done));
	}
}

function sortMs(length: number): number {
	const numbers = Float64Array.from({ length }, (_, nth) => (nth * 7919) % 1000);
	const took = Array.from({ length: 21 }, () => {
		const began = performance.now();
		Float64Array.from(numbers).sort();
		return performance.now() - began;
	});
	return took.sort((one, other) => one - other)[10] ?? NaN;
}
