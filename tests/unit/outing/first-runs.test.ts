import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestFirstRun } from '$lib/outing/first-runs.ts';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { shortenRuns } from '$lib/outing/shorten-runs.ts';

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
	[42, 340],
	[49, 510],
	[105, 13_135],
	[111, 13_135],
	[112, null],
	[400, null]
])('%i days after settling in a run lasts %s s at most', (days, longest) => {
	expect(longestFirstRun(days)).toBe(longest);
});

/** Where there is no limit any more, an outing has one. */
const longest = (days: number) => longestFirstRun(days) ?? outingLimits.outingSeconds.high;
const anyDay = fc.integer({ min: 0, max: 500 });

test('from week to week it never grows by more than half, and never falls, however long one waits', () => {
	fc.assert(
		fc.property(anyDay, (days) => {
			const [now, later] = [longest(days), longest(days + 7)];
			expect(later).toBeGreaterThanOrEqual(now);
			// Both are whole steps of 5 s, rounded down.
			expect(later).toBeLessThan((now + 5) * 1.5);
		})
	);
});

test('whatever the group runs, the run that is left of it grows no faster', () => {
	const ranOn = (days: number, run: number) => {
		const outing: Outing = { name: 'One', parts: [plainPhase('steady-run', run), ending] };
		const limit = longestFirstRun(days);
		const own = phasesOf(limit === null ? outing : shortenRuns(outing, limit));
		return own[0]?.kind === 'steady-run' ? own[0].seconds : 0;
	};
	const ending = plainPhase('recovery-walk', 60);
	fc.assert(
		fc.property(anyDay, fc.integer({ min: 1, max: 800 }), (days, steps) => {
			const run = steps * 5;
			const [now, later] = [ranOn(days, run), ranOn(days + 7, run)];
			fc.pre(now > 0);
			expect(later).toBeLessThan((now + 5) * 1.5);
		})
	);
});

test('what is no number of days is a mistake of the caller', () => {
	expect(() => longestFirstRun(-1)).toThrow(RangeError);
	expect(() => longestFirstRun(Number.NaN)).toThrow(RangeError);
});
