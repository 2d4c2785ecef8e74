import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flashMs, mayFlash } from '../../src/routes/prompter/flash-pace.ts';

/* The most flashes in a second: WCAG 2.2, 2.3.1. How long one stands: our own choice, no source. */

describe('flashes of the screen', () => {
	it('begins at once where there was none', () => {
		expect(mayFlash(null, 0)).toBe(true);
	});

	it('never number more than three in any second, whenever cues fall due', () => {
		const waits = fc.array(fc.integer({ min: 1, max: 1500 }), { maxLength: 60 });
		fc.assert(
			fc.property(waits, (waited) => {
				const begun: number[] = [];
				let nowMs = 0;
				for (const wait of waited) {
					nowMs += wait;
					if (mayFlash(begun.at(-1) ?? null, nowMs)) begun.push(nowMs);
				}
				for (const from of begun) {
					const inSecond = begun.filter((at) => at >= from && at <= from + 1000);
					expect(inSecond.length).toBeLessThanOrEqual(3);
				}
			}),
			{ seed: 20_261_125 }
		);
	});

	it('in the last three seconds are three, each over before the next begins', () => {
		expect([0, 1000, 2000].map((at) => mayFlash(at === 0 ? null : at - 1000, at))).toEqual([
			true,
			true,
			true
		]);
		expect(flashMs(true, false)).toBeLessThan(1000);
	});

	it('stand from one second to the next where less motion is asked for, so that nothing flashes', () => {
		// A look comes four times a second, so a cue may be given a quarter of a second late.
		expect(flashMs(true, true)).toBeGreaterThan(1250);
		expect(flashMs(false, true)).toBe(flashMs(true, true));
	});
});
