import fc from 'fast-check';
import { mean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
	expectedCurve,
	expectedMean,
	expectedPeak,
	pulseEdges,
	type PulseStep
} from '$lib/physiology/pulse-response.ts';

// Laws of exact exponential steps; numbers worked out elsewhere stand with the published values.

const step = (durationSeconds: number, steadyBpm: number): PulseStep => ({
	durationSeconds,
	steadyBpm
});
const outing = Object.freeze([
	step(400, 105),
	step(50, 160),
	step(110, 104),
	step(70, 158),
	step(110, 104),
	step(360, 95)
]);

const steps = fc.array(
	fc.record({
		durationSeconds: fc.integer({ min: 1, max: 900 }),
		steadyBpm: fc.double({ min: 60, max: 190, noNaN: true })
	}),
	{ minLength: 1, maxLength: 12 }
);
const starts = fc.double({ min: 50, max: 150, noNaN: true });

describe('expected pulse of an outing', () => {
	it('is the start alone when there is no phase', () => {
		expect(expectedCurve([], 80, 5)).toEqual([{ seconds: 0, bpm: 80 }]);
		expect(expectedPeak([], 80)).toEqual({ seconds: 0, bpm: 80 });
		expect(() => expectedMean([], 80)).toThrow(RangeError);
		expect(() => expectedMean([step(0, 120)], 80)).toThrow(RangeError);
	});

	it('passes over a phase that takes no time', () => {
		const withNothing = [outing[0]!, step(0, 200), ...outing.slice(1)];
		expect(expectedCurve(withNothing, 80, 5)).toEqual(expectedCurve(outing, 80, 5));
	});

	it('refuses a duration or an interval that is no time', () => {
		for (const duration of [-1, NaN, Infinity]) {
			expect(() => pulseEdges([step(duration, 120)], 80)).toThrow(RangeError);
		}
		for (const interval of [0, -5, NaN]) {
			expect(() => expectedCurve(outing, 80, interval)).toThrow(RangeError);
		}
	});

	it('has a point at zero, at every interval, and at the end', () => {
		const seconds = (every: number) =>
			expectedCurve([step(7, 120), step(4, 100)], 80, every).map((point) => point.seconds);
		expect(seconds(5)).toEqual([0, 5, 10, 11]);
		expect(seconds(11)).toEqual([0, 11]);
		expect(seconds(60)).toEqual([0, 11]);
	});

	it('passes through the edges of its phases', () => {
		const curve = expectedCurve(outing, 80, 10);
		for (const edge of pulseEdges(outing, 80)) {
			const there = curve.find((point) => point.seconds === edge.seconds);
			expect(there?.bpm).toBeCloseTo(edge.bpm, 9);
		}
	});

	it('peaks at the end of the hardest run, not at its middle', () => {
		expect(expectedPeak(outing, 80).seconds).toBe(400 + 50 + 110 + 70);
	});

	it('does not change when a phase is split', () => {
		fc.assert(
			fc.property(
				steps,
				starts,
				fc.nat(),
				fc.double({ min: 0, max: 1, noNaN: true }),
				(all, start, pick, share) => {
					const at = pick % all.length;
					const whole = all[at]!;
					const first = whole.durationSeconds * share;
					const split = [
						...all.slice(0, at),
						{ ...whole, durationSeconds: first },
						{ ...whole, durationSeconds: whole.durationSeconds - first },
						...all.slice(at + 1)
					];
					expect(pulseEdges(split, start).at(-1)!.bpm).toBeCloseTo(
						pulseEdges(all, start).at(-1)!.bpm,
						7
					);
					expect(expectedMean(split, start)).toBeCloseTo(expectedMean(all, start), 7);
					expect(expectedPeak(split, start).bpm).toBeCloseTo(expectedPeak(all, start).bpm, 7);
				}
			)
		);
	});

	it('stays within its start and its steady pulses, and the mean within peak and lowest edge', () => {
		fc.assert(
			fc.property(steps, starts, (all, start) => {
				const levels = [start, ...all.map(({ steadyBpm }) => steadyBpm)];
				const edges = pulseEdges(all, start).map(({ bpm }) => bpm);
				const peak = expectedPeak(all, start).bpm;
				const average = expectedMean(all, start);
				expect(Math.max(...edges)).toBeLessThanOrEqual(Math.max(...levels) + 1e-9);
				expect(Math.min(...edges)).toBeGreaterThanOrEqual(Math.min(...levels) - 1e-9);
				expect(average).toBeLessThanOrEqual(peak + 1e-9);
				expect(average).toBeGreaterThanOrEqual(Math.min(...edges) - 1e-9);
			})
		);
	});

	it('has no point above its peak', () => {
		fc.assert(
			fc.property(steps, starts, (all, start) => {
				const highest = Math.max(...expectedCurve(all, start, 5).map(({ bpm }) => bpm));
				expect(highest).toBeLessThanOrEqual(expectedPeak(all, start).bpm + 1e-9);
			})
		);
	});

	it('has the mean that a fine curve averages to', () => {
		const fine = expectedCurve(outing, 80, 0.5).map(({ bpm }) => bpm);
		expect(expectedMean(outing, 80)).toBeCloseTo(mean(fine), 1);
	});

	it('never rises at the next peak when the recovery before it is longer', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 20, max: 600 }),
				fc.integer({ min: 0, max: 300 }),
				fc.integer({ min: 1, max: 300 }),
				(runSeconds, walkSeconds, extraSeconds) => {
					const nextPeak = (recoverySeconds: number) =>
						pulseEdges(
							[step(runSeconds, 160), step(recoverySeconds, 104), step(runSeconds, 160)],
							104
						).at(-1)!.bpm;
					expect(nextPeak(walkSeconds + extraSeconds)).toBeLessThanOrEqual(
						nextPeak(walkSeconds) + 1e-9
					);
				}
			)
		);
	});
});
