import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recoverySeconds } from '$lib/outing/programme/recovery-length.ts';
import { runLengths } from '$lib/outing/programme/run-lengths.ts';
import { unknownPulse } from '$lib/outing/programme/wishes.ts';

describe('lengths of runs', () => {
	test('refuse what is no run or no whole step', () => {
		expect(() => runLengths(100, 10)).toThrow(RangeError);
		expect(() => runLengths(101, 50)).toThrow(RangeError);
		expect(() => runLengths(40, 50)).toThrow(RangeError);
	});

	test('are one run where nothing is left for a second', () => {
		expect(runLengths(600, 600)).toEqual([600]);
		expect(runLengths(610, 600)).toEqual([600]);
		expect(runLengths(615, 600)).toEqual([15, 600]);
	});

	test('add up to the total wherever twelve runs can hold it, and are never more', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 3, max: 400 }),
				fc.integer({ min: 0, max: 3000 }),
				(longest, more) => {
					const [total, most] = [(longest + more) * 5, longest * 5];
					const lengths = runLengths(total, most);
					const sum = lengths.reduce((one, other) => one + other, 0);
					expect(lengths.length).toBeLessThanOrEqual(12);
					expect(Math.max(...lengths)).toBe(most);
					expect(lengths.every((seconds) => seconds % 5 === 0 && seconds >= 15)).toBe(true);
					expect(sum).toBeLessThanOrEqual(total);
					// Of runs from 15 s to under 30 s not every sum can be made.
					if (total <= 12 * most && more >= 3) expect(total - sum).toBeLessThan(most < 30 ? 15 : 5);
				}
			),
			{ numRuns: 2000 }
		);
	});
});

describe('a recovery', () => {
	// From 0.72 - 0.22 exp(-300 / 57.6) = 0.7188 to 0.5 towards 0.35 with 90.6 + 30.4 = 121 s (Barak
	// 2011): 121 ln(0.3688 / 0.15) = 108.8 s (computed).
	test('is as long as a slow pulse needs to come back, up to whole steps', () => {
		expect(recoverySeconds(300, unknownPulse)).toBe(110);
	});

	test('is never under 95 s, and ends where none is long enough', () => {
		expect(recoverySeconds(20, unknownPulse)).toBe(95);
		expect(recoverySeconds(60, { ...unknownPulse, walkShare: 0.6 })).toBe(240);
	});

	test('is never shorter after a longer run', () => {
		fc.assert(
			fc.property(fc.nat({ max: 900 }), fc.nat({ max: 900 }), (run, more) => {
				expect(recoverySeconds(run + more, unknownPulse)).toBeGreaterThanOrEqual(
					recoverySeconds(run, unknownPulse)
				);
			})
		);
	});
});
