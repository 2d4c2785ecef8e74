import fc from 'fast-check';
import { expect, test } from 'vitest';
import { phasesOf } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import { walkingOuting } from '$lib/outing/walking-outing.ts';
import { anyOuting } from './any-outing.ts';

const run = plainPhase('steady-run', 50);
const walk = plainPhase('recovery-walk', 110);

test('nothing adds up to nothing', () => {
	expect(outingTotals({ parts: [] })).toEqual({
		totalSeconds: 0,
		runningSeconds: 0,
		longestRunSeconds: 0,
		phaseCount: 0
	});
});

test('repeats count as often as they are done', () => {
	expect(outingTotals({ parts: [walk, { times: 4, phases: [run, walk] }] })).toEqual({
		totalSeconds: 750,
		runningSeconds: 200,
		longestRunSeconds: 50,
		phaseCount: 9
	});
});

test('runs without a walk between are one run, over the edges of a repeat too', () => {
	expect(outingTotals({ parts: [run, { times: 3, phases: [run] }] }).longestRunSeconds).toBe(200);
	expect(outingTotals({ parts: [run, walk, run] }).longestRunSeconds).toBe(50);
});

test('a walking outing lasts as long, has as many phases, and no run', () => {
	fc.assert(
		fc.property(anyOuting, (outing) => {
			const walking = walkingOuting(outing);
			expect(phasesOf(walking).map(({ seconds }) => seconds)).toEqual(
				phasesOf(outing).map(({ seconds }) => seconds)
			);
			expect(outingTotals(walking).runningSeconds).toBe(0);
			expect(walkingOuting(walking)).toEqual(walking);
		})
	);
});

test('a walking outing leaves walks alone, and nothing of a run but its length', () => {
	const fast = { ...run, speedKmh: 9, inclinePercent: 1, cue: 'Run on', target: null };
	expect(walkingOuting({ name: 'One', parts: [{ ...walk, cue: 'Slow down' }, fast] })).toEqual({
		name: 'One',
		parts: [{ ...walk, cue: 'Slow down' }, plainPhase('brisk-walk', 50)]
	});
});
