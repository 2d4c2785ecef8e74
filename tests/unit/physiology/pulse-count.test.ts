import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countDelayError, SITTING_AFTER_EFFORT } from '../../../src/lib/physiology/count-delay.ts';
import {
	beatsIn,
	countedAs,
	largestPulseCountSpread,
	pulseCountSpread,
	pulseCountStep,
	pulseFromCount
} from '../../../src/lib/physiology/pulse-count.ts';

const seconds = fc.constantFrom(6, 10, 15, 20, 30, 60);
const bpm = fc.double({ min: 30, max: 220, noNaN: true });

describe('a pulse counted by hand', () => {
	it('goes from beats to pulse and back', () => {
		fc.assert(
			fc.property(seconds, fc.integer({ min: 0, max: 200 }), (time, beats) => {
				expect(beatsIn(time, pulseFromCount(beats, time))).toBeCloseTo(beats, 9);
			})
		);
	});

	it('is off by less than one beat, whenever the clock starts', () => {
		// The beats of a steady pulse fall on whole numbers of beat lengths; the clock starts in between.
		const start = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
		fc.assert(
			fc.property(seconds, bpm, start, (time, pulse, phase) => {
				const beats = Math.floor(beatsIn(time, pulse) + phase);
				expect(Math.abs(pulseFromCount(beats, time) - pulse)).toBeLessThan(
					pulseCountStep(time) + 1e-9
				);
			})
		);
	});

	it('is right on average over all starts, with the spread that is claimed', () => {
		fc.assert(
			fc.property(seconds, bpm, (time, pulse) => {
				const starts = Array.from({ length: 4000 }, (_, at) => (at + 0.5) / 4000);
				const counts = starts.map((phase) =>
					pulseFromCount(Math.floor(beatsIn(time, pulse) + phase), time)
				);
				const average = counts.reduce((sum, count) => sum + count, 0) / counts.length;
				const square =
					counts.reduce((sum, count) => sum + (count - average) ** 2, 0) / counts.length;
				expect(Math.abs(average - pulse)).toBeLessThan(0.01);
				expect(Math.abs(Math.sqrt(square) - pulseCountSpread(time, pulse))).toBeLessThan(0.2);
			}),
			{ numRuns: 50 }
		);
	});

	it('comes out as one of two neighbours that enclose it', () => {
		fc.assert(
			fc.property(seconds, bpm, (time, pulse) => {
				const { low, high } = countedAs(time, pulse);
				expect(low).toBeLessThanOrEqual(pulse + 1e-9);
				expect(high).toBeGreaterThanOrEqual(pulse - 1e-9);
				expect(high - low).toBeLessThanOrEqual(pulseCountStep(time) + 1e-9);
			})
		);
	});

	it('never spreads more than half a step', () => {
		fc.assert(
			fc.property(seconds, bpm, (time, pulse) => {
				expect(pulseCountSpread(time, pulse)).toBeLessThanOrEqual(largestPulseCountSpread(time));
			})
		);
	});

	it('needs time and beats', () => {
		for (const time of [0, -15, NaN]) {
			expect(() => pulseFromCount(19, time)).toThrow('pulseFromCount requires');
			expect(() => beatsIn(time, 76)).toThrow('beatsIn requires');
			expect(() => pulseCountStep(time)).toThrow('pulseCountStep requires');
		}
		expect(() => pulseFromCount(-1, 15)).toThrow('pulseFromCount requires');
		expect(() => beatsIn(15, NaN)).toThrow('beatsIn requires');
		expect(pulseFromCount(0, 15)).toBe(0);
	});
});

/** Far below anything that is shown, far above the last digit of a double. */
const ROUNDING_BPM = 1e-9;

describe('a count that starts late', () => {
	const delay = fc.double({ min: 0, max: 60, noNaN: true });

	it('sees the mean of the falling pulse over the counting time', () => {
		fc.assert(
			fc.property(delay, seconds, (wait, time) => {
				const { fromBpm, towardsBpm, timeConstantSeconds: tau } = SITTING_AFTER_EFFORT;
				const parts = 2000;
				let sum = 0;
				for (let part = 0; part < parts; part++) {
					const at = wait + ((part + 0.5) * time) / parts;
					sum += towardsBpm + (fromBpm - towardsBpm) * Math.exp(-at / tau) - fromBpm;
				}
				expect(countDelayError(SITTING_AFTER_EFFORT, wait, time)).toBeCloseTo(sum / parts, 4);
			}),
			{ numRuns: 50 }
		);
	});

	it('reads lower the later and the longer it is, and never lower than the pulse will get', () => {
		fc.assert(
			fc.property(delay, delay, seconds, (one, other, time) => {
				const error = (wait: number, count: number) =>
					countDelayError(SITTING_AFTER_EFFORT, wait, count);
				// Delays that differ in their last digits alone differ by less than the sum is rounded.
				expect(error(Math.max(one, other), time)).toBeLessThanOrEqual(
					error(Math.min(one, other), time) + ROUNDING_BPM
				);
				expect(error(one, time + 5)).toBeLessThan(error(one, time));
				expect(error(one, time)).toBeGreaterThan(-44);
				expect(error(one, time)).toBeLessThan(0);
			}),
			{ examples: [[59.999999999999986, 59.999999999999964, 10]] }
		);
	});

	it('has no meaning before stopping or without a count', () => {
		expect(() => countDelayError(SITTING_AFTER_EFFORT, -1, 15)).toThrow('countDelayError requires');
		expect(() => countDelayError(SITTING_AFTER_EFFORT, 5, 0)).toThrow('countDelayError requires');
		const still = { ...SITTING_AFTER_EFFORT, timeConstantSeconds: 0 };
		expect(() => countDelayError(still, 5, 15)).toThrow('countDelayError requires');
	});
});
