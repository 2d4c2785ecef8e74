import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestFirstRun, SHORT_RUN_DAYS } from '$lib/outing/first-runs.ts';

// Our own caution, no source: runs of 20 to 30 s first, growing by half a week.

test.each([
	[0, 30],
	[6, 30],
	[7, 45],
	[14, 65],
	[21, 100],
	[28, 150],
	[35, 225],
	[41, 225],
	[42, null],
	[400, null]
])('%i days after settling in a run lasts %s s at most', (days, longest) => {
	expect(longestFirstRun(days)).toBe(longest);
});

test('from week to week it never grows by more than half, and never falls', () => {
	fc.assert(
		fc.property(fc.integer({ min: 0, max: SHORT_RUN_DAYS - 8 }), (days) => {
			const [now, later] = [longestFirstRun(days), longestFirstRun(days + 7)];
			expect(later).toBeGreaterThanOrEqual(now ?? Infinity);
			// Both are whole steps of 5 s.
			expect(later).toBeLessThan(((now ?? 0) + 5) * 1.5);
		})
	);
});

test('what is no number of days is a mistake of the caller', () => {
	expect(() => longestFirstRun(-1)).toThrow(RangeError);
	expect(() => longestFirstRun(Number.NaN)).toThrow(RangeError);
});
