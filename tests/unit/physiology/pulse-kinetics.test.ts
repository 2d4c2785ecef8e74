import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pulseAfter, pulseArea, secondsUntil } from '$lib/physiology/pulse-kinetics.ts';

const pulses = fc.double({ min: 40, max: 200, noNaN: true });
const times = fc.double({ min: 0, max: 1800, noNaN: true });

describe('pulse some seconds into a phase', () => {
	it('has not moved at its start, and has arrived long after', () => {
		expect(pulseAfter(100, 160, 0)).toBe(100);
		expect(pulseAfter(100, 160, Infinity)).toBe(160);
		expect(pulseAfter(160, 100, 1e5)).toBe(100);
	});

	it('stays where it is when it is steady', () => {
		expect(pulseAfter(120, 120, 77)).toBe(120);
	});

	it('does not look back in time', () => {
		expect(() => pulseAfter(100, 160, -1)).toThrow(RangeError);
		expect(() => pulseAfter(100, 160, NaN)).toThrow(RangeError);
		expect(() => pulseArea(100, 160, -1)).toThrow(RangeError);
	});

	it('rises faster than it falls in a walk', () => {
		const risen = pulseAfter(100, 160, 60) - 100;
		const fallen = 160 - pulseAfter(160, 100, 60);
		expect(risen).toBeGreaterThan(fallen);
	});

	it('lies between start and steady pulse', () => {
		fc.assert(
			fc.property(pulses, pulses, times, (start, steady, seconds) => {
				const bpm = pulseAfter(start, steady, seconds);
				expect(bpm).toBeGreaterThanOrEqual(Math.min(start, steady) - 1e-9);
				expect(bpm).toBeLessThanOrEqual(Math.max(start, steady) + 1e-9);
			})
		);
	});

	it('does not depend on where a phase is split', () => {
		fc.assert(
			fc.property(pulses, pulses, times, times, (start, steady, first, second) => {
				const halfway = pulseAfter(start, steady, first);
				expect(pulseAfter(halfway, steady, second)).toBeCloseTo(
					pulseAfter(start, steady, first + second),
					9
				);
			})
		);
	});
});

describe('seconds until a level', () => {
	it('are none for where it starts, and without end for what is never reached', () => {
		expect(secondsUntil(100, 160, 100)).toBe(0);
		expect(secondsUntil(100, 100, 100)).toBe(0);
		for (const level of [160, 161, 99, Infinity]) {
			expect(secondsUntil(100, 160, level)).toBe(Infinity);
		}
		for (const level of [100, 99, 161]) {
			expect(secondsUntil(160, 100, level)).toBe(Infinity);
		}
		expect(secondsUntil(120, 120, 121)).toBe(Infinity);
	});

	it('are the time at which the pulse is at that level', () => {
		fc.assert(
			fc.property(
				pulses,
				pulses,
				fc.double({ min: 0.001, max: 0.999, noNaN: true }),
				(start, steady, share) => {
					fc.pre(Math.abs(start - steady) > 0.1);
					const level = start + share * (steady - start);
					const seconds = secondsUntil(start, steady, level);
					expect(pulseAfter(start, steady, seconds)).toBeCloseTo(level, 8);
				}
			)
		);
	});
});

describe('area under the pulse', () => {
	it('is nothing in no time', () => {
		expect(pulseArea(100, 160, 0)).toBeCloseTo(0, 12);
	});

	// Simpson's rule is the independent reference: its error here is below 1e-6 of the area.
	it('is what numeric integration gives', () => {
		const integrated = (start: number, steady: number, seconds: number) => {
			const slices = 200;
			const width = seconds / slices;
			let sum = 0;
			for (let slice = 0; slice <= slices; slice++) {
				const weight = slice === 0 || slice === slices ? 1 : slice % 2 === 1 ? 4 : 2;
				sum += weight * pulseAfter(start, steady, slice * width);
			}
			return (sum * width) / 3;
		};
		fc.assert(
			fc.property(
				pulses,
				pulses,
				fc.double({ min: 1, max: 600, noNaN: true }),
				(start, steady, seconds) => {
					const area = pulseArea(start, steady, seconds);
					expect(area / integrated(start, steady, seconds)).toBeCloseTo(1, 6);
				}
			)
		);
	});
});
