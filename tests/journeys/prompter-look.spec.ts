import { AxeBuilder } from '@axe-core/playwright';
import type { Locator } from '@playwright/test';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { button, heading, answerDay, open, take, usualIs } from './an-outing.ts';
import { expect, test } from './test.ts';

/*
 * Read from two metres, and in the sun. A CSS pixel is about 1/163 of an inch on a phone in the hand
 * (device makers' figures, from memory). Somebody who sees 6/12 reads letters of 10 minutes of arc, as
 * 6/6 is 5 (the definition of Snellen's fraction); for figures that are read at a glance at least 16
 * are usual (ISO 9241-303, from memory). Contrast: WCAG 2.2, 1.4.6, 7 to 1.
 */

const MM_A_PIXEL = 25.4 / 163;
const AWAY_MM = 2000;
/** How large something of so many pixels is from two metres, in minutes of arc. */
const arcMinutes = (pixels: number) =>
	(Math.atan((pixels * MM_A_PIXEL) / AWAY_MM) * 180 * 60) / Math.PI;

/** The height of its letters as they are drawn, without what hangs below or stands out. */
const heightOf = (text: Locator, letter: string) =>
	text.evaluate((it, one) => {
		const { fontWeight, fontSize, fontFamily } = getComputedStyle(it);
		const pen = document.createElement('canvas').getContext('2d');
		if (pen === null) throw new Error('nothing to measure with');
		pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
		return pen.measureText(one).actualBoundingBoxAscent;
	}, letter);

const outing = {
	name: 'One of each',
	parts: [
		plainPhase('warm-up-walk', 900),
		plainPhase('brisk-walk', 300),
		plainPhase('steady-run', 40),
		plainPhase('recovery-walk', 110),
		plainPhase('cool-down-walk', 420)
	]
};

for (const [how, viewport] of [
	['standing', { width: 360, height: 780 }],
	['lying', { width: 780, height: 360 }]
] as const) {
	test(`${how}, part and clock are read from two metres, whole and at once, dark and bright`, async ({
		page,
		phone,
		context
	}) => {
		await page.setViewportSize(viewport);
		await usualIs(context, outing);
		await phone.screen();
		await open(page);
		await take(page, outing.name);
		await answerDay(page);
		await page.getByLabel('Outdoors').check();
		await button(page, 'Start').click();
		for (const name of [
			'Warm-up walk',
			'Brisk walk',
			'Steady run',
			'Recovery walk',
			'Cool-down walk'
		]) {
			await expect(heading(page)).toHaveText(name);
			expect(arcMinutes(await heightOf(heading(page), 'H')), name).toBeGreaterThanOrEqual(10);
			const clock = page.locator('.clock');
			expect(arcMinutes(await heightOf(clock, '0')), name).toBeGreaterThanOrEqual(16);
			for (const part of [heading(page), clock]) {
				await expect(part).toBeInViewport({ ratio: 1 });
				expect(await part.evaluate((it) => it.scrollWidth - it.clientWidth)).toBe(0);
			}
			// Nothing that stays lies over the clock.
			const [itsBox, stays] = [
				await clock.boundingBox(),
				await page.locator('.always').boundingBox()
			];
			expect((itsBox?.y ?? 0) + (itsBox?.height ?? 0)).toBeLessThanOrEqual((stays?.y ?? 0) + 1);
			if (name !== 'Cool-down walk') await button(page, 'Skip this part').click();
		}
		for (const look of ['Bright screen', 'Dark screen']) {
			await button(page, look).click();
			const { violations } = await new AxeBuilder({ page })
				.withRules(['color-contrast', 'color-contrast-enhanced'])
				.analyze();
			expect(violations, look).toEqual([]);
		}
	});
}
