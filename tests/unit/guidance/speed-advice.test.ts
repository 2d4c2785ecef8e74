import { describe, expect, test } from 'vitest';
import { slowestRun } from '$lib/guidance/slowest-run.ts';
import { speedAdvice } from '$lib/guidance/speed-advice.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import type { SpeedCapacity } from '$lib/physiology/capacity.ts';

const capacity = (mlPerKgPerMinute: number): SpeedCapacity => ({
	mlPerKgPerMinute,
	spread: 2,
	basis: 'measured'
});
const off = { kind: 'off', reasons: ['H-MEDS'], careTeamLimitBpm: null } as const;
const notYet = { kind: 'not-yet', why: 'not-known', careTeamLimitBpm: null } as const;
const run = phaseTargets['steady-run'];

describe('without a measured capacity', () => {
	test('no speed of one’s own: the natural range, and a run from 5.0 km/h', () => {
		const advice = speedAdvice(run, null, notYet);
		expect(advice).toMatchObject({ kind: 'natural', highMetresPerMinute: null });
		expect(advice).toHaveProperty('lowMetresPerMinute', expect.closeTo(83.3333, 4));
	});
});

describe('with a measured capacity', () => {
	// Capacity 50: 50 to 62 % of reserve is 26.75 to 32.33, running level (uptake - 3.5) / 0.2:
	// 116.25 to 144.15 m/min (ACSM running equation).
	test('a run has the speed of the ACSM running equation', () => {
		expect(speedAdvice(run, capacity(50), notYet)).toMatchObject({
			kind: 'range',
			lowMetresPerMinute: expect.closeTo(116.25, 6),
			highMetresPerMinute: expect.closeTo(144.15, 6)
		});
	});

	test('a recovery walk is 4 to 5 km/h for everybody', () => {
		const recovery = phaseTargets['recovery-walk'];
		expect(speedAdvice(recovery, capacity(50), notYet)).toEqual(
			speedAdvice(recovery, null, notYet)
		);
	});

	// Capacity 30: 62 % of reserve is 19.93, a run of 82.15 m/min or 4.93 km/h: no run this gentle.
	test('where even the firm edge is slower than a run, there is no run this gentle', () => {
		expect(speedAdvice(run, capacity(30), notYet).kind).toBe('no-run-this-gentle');
	});
});

describe('the slowest run', () => {
	// At capacity 28 a run of 5.0 km/h takes 20.17, which is 68 % of reserve: above 62 %, so it has
	// an end; the pulse model (Hunt 2015, Barak 2011) gives it. Checked by walking the cycle through.
	test('ends where the pulse of a repeated cycle reaches the upper edge', () => {
		const slowest = slowestRun(run, capacity(28), notYet);
		if (slowest.kind !== 'longest') throw new Error('there is an estimate');
		const runLevel = (83.3333333 * 0.2) / 24.5;
		const walkLevel = (75 * 0.1) / 24.5;
		let fraction = 0.3;
		for (let cycle = 0; cycle < 40; cycle += 1) {
			fraction = runLevel + (fraction - runLevel) * Math.exp(-slowest.seconds / 57.6);
			if (cycle < 39) fraction = walkLevel + (fraction - walkLevel) * Math.exp(-110 / 90.6);
		}
		expect(fraction).toBeCloseTo(0.62, 6);
	});

	test('has no estimate where it would need more than the whole capacity', () => {
		expect(slowestRun(run, capacity(18), notYet)).toEqual({ kind: 'short-runs' });
	});

	test('has no estimate with pulse off, whose course is not to be trusted', () => {
		expect(slowestRun(run, capacity(28), off)).toEqual({ kind: 'short-runs' });
	});
});
