import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intensityOf } from '$lib/physiology/intensity.ts';
import { secondsBelow, secondsByIntensity } from '$lib/physiology/pulse-by-intensity.ts';
import { expectedCurve, type PulseStep } from '$lib/physiology/pulse-response.ts';

const reserve = { restingBpm: 70, maximumBpm: 180 };
const step = (durationSeconds: number, steadyBpm: number): PulseStep => ({
	durationSeconds,
	steadyBpm
});
const none = { 'very-light': 0, light: 0, moderate: 0, vigorous: 0, 'near-maximal': 0 };

describe('time by intensity', () => {
	it('is none without a phase', () => {
		expect(secondsByIntensity([], 80, reserve)).toEqual(none);
	});

	it('needs a maximum above the resting pulse', () => {
		expect(() => secondsByIntensity([], 80, { restingBpm: 70, maximumBpm: 70 })).toThrow(
			RangeError
		);
	});

	it('gives a pulse on a cut point to the class above', () => {
		expect(secondsByIntensity([step(60, 114)], 114, reserve)).toEqual({ ...none, moderate: 60 });
		expect(secondsByIntensity([step(60, 113.9)], 113.9, reserve)).toEqual({ ...none, light: 60 });
	});

	it('knows the very second at which the pulse crosses, rising and falling', () => {
		// From 100 towards 140 the pulse is 125.2848 after one time constant of 57.6 s.
		const level = 100 + 40 * (1 - Math.exp(-1));
		expect(secondsBelow([step(300, 140)], 100, level)).toBeCloseTo(57.6, 9);
		const fallen = 140 - 40 * (1 - Math.exp(-1));
		expect(secondsBelow([step(300, 100)], 140, fallen)).toBeCloseTo(300 - 90.6, 9);
	});

	it('counts a level that is only neared as never crossed', () => {
		expect(secondsBelow([step(300, 140)], 100, 140)).toBe(300);
		expect(secondsBelow([step(300, 100)], 140, 100)).toBe(0);
	});

	it('adds up to the whole time, and agrees with counting points of a fine curve', () => {
		const steps = fc.array(
			fc.record({
				durationSeconds: fc.integer({ min: 30, max: 300 }),
				steadyBpm: fc.integer({ min: 80, max: 178 })
			}),
			{ minLength: 1, maxLength: 8 }
		);
		fc.assert(
			fc.property(steps, fc.integer({ min: 75, max: 120 }), (all, startBpm) => {
				const seconds = secondsByIntensity(all, startBpm, reserve);
				const total = all.reduce((sum, { durationSeconds }) => sum + durationSeconds, 0);
				const sum = Object.values(seconds).reduce((one, other) => one + other, 0);
				expect(sum).toBeCloseTo(total, 7);
				const counted = { ...none };
				// Midpoints of half seconds: at most one is miscounted at each of a phase's crossings.
				for (const { bpm } of expectedCurve(all, startBpm, 0.25).filter((_, at) => at % 2 === 1)) {
					counted[intensityOf('reservePercent', ((bpm - 70) / 110) * 100)] += 0.5;
				}
				for (const [name, counts] of Object.entries(counted)) {
					const exact = seconds[name as keyof typeof none];
					expect(Math.abs(exact - counts)).toBeLessThanOrEqual(0.5 * 2 * all.length + 0.5);
				}
			}),
			{ numRuns: 50 }
		);
	});
});
