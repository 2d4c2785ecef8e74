import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import type { SpeedCapacity } from '$lib/physiology/capacity.ts';
import { oxygenUptake, type Gait } from '$lib/physiology/metabolic-cost.ts';
import { speedForReserve, type SpeedTarget } from '$lib/physiology/speed-for-reserve.ts';
import { reserveFractionOfUptake } from '$lib/physiology/uptake-reserve.ts';

const inMetresPerMinute = (kmPerHour: number) => Qty(kmPerHour, 'km/h').to('m/min').scalar;
const SLOWEST_WALK = inMetresPerMinute(3);
const FASTEST_WALK = inMetresPerMinute(7);
const SLOWEST_RUN = inMetresPerMinute(5);

const capacityOf = (mlPerKgPerMinute: number, spread = 0): SpeedCapacity => ({
	mlPerKgPerMinute,
	spread,
	basis: 'measured'
});

const target = (change: Partial<SpeedTarget>): SpeedTarget => ({
	gait: 'walk',
	lowFraction: 0.4,
	highFraction: 0.59,
	capacity: capacityOf(30),
	grade: 0,
	...change
});

describe('speed for a target in reserve', () => {
	it('refuses edges that are not fractions in order', () => {
		for (const [lowFraction, highFraction] of [
			[-0.1, 0.5],
			[0.6, 0.5],
			[0.5, 1.1],
			[40, 59],
			[NaN, 0.5]
		] as const) {
			expect(() => speedForReserve(target({ lowFraction, highFraction }))).toThrow(RangeError);
		}
	});

	it('is never set from questions alone, types or no types', () => {
		const guessed = { mlPerKgPerMinute: 30, spread: 5.7, basis: 'questions' } as const;
		expect(() =>
			speedForReserve(target({ capacity: guessed as unknown as SpeedCapacity }))
		).toThrow(RangeError);
	});

	it('clips a walk to what people walk', () => {
		// 30 % of reserve at 17.5 takes 42 m/min, 80 % takes 112.
		const answer = speedForReserve(
			target({ lowFraction: 0.3, highFraction: 0.8, capacity: capacityOf(17.5) })
		);
		expect(answer).toMatchObject({ kind: 'range', lowMetresPerMinute: SLOWEST_WALK });
		expect(answer).toHaveProperty('highMetresPerMinute', expect.closeTo(112, 9));
	});

	it('keeps a walk that reaches the target from its gentle edge on, up to 7 km/h', () => {
		// 40 % of reserve at 30 takes 106 m/min, 59 % takes 156.
		const answer = speedForReserve(target({}));
		expect(answer).toMatchObject({ kind: 'range', highMetresPerMinute: FASTEST_WALK });
		expect(answer).toHaveProperty('lowMetresPerMinute', expect.closeTo(106, 9));
	});

	it('offers an incline to a walker who would have to run, and it asks for exactly the target', () => {
		const fit = target({ capacity: capacityOf(40) });
		const answer = speedForReserve(fit);
		if (answer.kind !== 'too-fast-to-walk' || answer.incline === null) {
			throw new Error(`not an incline but ${answer.kind}`);
		}
		const { speedMetresPerMinute, lowGrade, highGrade } = answer.incline;
		expect(speedMetresPerMinute).toBeCloseTo(FASTEST_WALK, 9);
		for (const [grade, fraction] of [
			[lowGrade, 0.4],
			[highGrade, 0.59]
		] as const) {
			const uptake = oxygenUptake({ gait: 'walk', speedMetresPerMinute, grade });
			expect(reserveFractionOfUptake(uptake, 40)).toBeCloseTo(fraction, 9);
		}
	});

	it('offers 15 % at most, and nothing where 15 % would not reach the target', () => {
		const strong = speedForReserve(
			target({ lowFraction: 0.5, highFraction: 0.9, capacity: capacityOf(60) })
		);
		expect(strong).toMatchObject({ kind: 'too-fast-to-walk', incline: { highGrade: 0.15 } });
		const beyond = speedForReserve(
			target({ lowFraction: 0.85, highFraction: 0.9, capacity: capacityOf(70) })
		);
		expect(beyond).toEqual({ kind: 'too-fast-to-walk', incline: null });
	});

	it('says so when even the slowest walk or run is too much', () => {
		const weak = { lowFraction: 0, highFraction: 0.3, capacity: capacityOf(14) };
		expect(speedForReserve(target(weak))).toEqual({ kind: 'no-walk-this-gentle' });
		expect(speedForReserve(target({ ...weak, gait: 'run' }))).toEqual({
			kind: 'no-run-this-gentle'
		});
	});

	// The steady run's target, 50 to 62 % of reserve; 5.0 km/h takes 20.17 mL/kg/min.
	it('has a steady run for a capacity of 31, and none for one of 30', () => {
		const run = (mlPerKgPerMinute: number) =>
			speedForReserve(
				target({
					gait: 'run',
					lowFraction: 0.5,
					highFraction: 0.62,
					capacity: capacityOf(mlPerKgPerMinute)
				})
			);
		expect(run(30)).toEqual({ kind: 'no-run-this-gentle' });
		expect(run(31)).toMatchObject({ kind: 'range', lowMetresPerMinute: SLOWEST_RUN });
	});

	it('carries the spread of capacity and equation', () => {
		const certain = speedForReserve(target({ highFraction: 0.5, capacity: capacityOf(20) }));
		// 7 % of 11.75 mL/kg/min over 0.1.
		expect(certain).toHaveProperty('spreadMetresPerMinute', expect.closeTo(8.225, 9));
		const unsure = speedForReserve(target({ highFraction: 0.5, capacity: capacityOf(20, 3) }));
		expect(unsure).toHaveProperty(
			'spreadMetresPerMinute',
			expect.closeTo(Math.hypot(8.225, 15), 9)
		);
	});

	it('has a spread that a simulation of the two errors gives too', () => {
		const { capacity, highFraction } = target({ highFraction: 0.5, capacity: capacityOf(20, 3) });
		const speeds: number[] = [];
		// A grid of normal scores in place of random draws: midpoints of equal shares.
		const scores = [-1.645, -1.036, -0.674, -0.385, -0.126, 0.126, 0.385, 0.674, 1.036, 1.645];
		const squareMean = scores.reduce((sum, score) => sum + score * score, 0) / scores.length;
		for (const one of scores) {
			for (const other of scores) {
				const trueCapacity =
					capacity.mlPerKgPerMinute + (capacity.spread * one) / Math.sqrt(squareMean);
				const cost = 1 + (0.07 * other) / Math.sqrt(squareMean);
				const uptake = 3.5 + highFraction * (trueCapacity - 3.5);
				speeds.push((uptake / cost - 3.5) / 0.1);
			}
		}
		const mean = speeds.reduce((sum, speed) => sum + speed, 0) / speeds.length;
		const variance = speeds.reduce((sum, speed) => sum + (speed - mean) ** 2, 0) / speeds.length;
		const answer = speedForReserve(target({ highFraction, capacity }));
		if (answer.kind !== 'range') throw new Error(answer.kind);
		expect(answer.spreadMetresPerMinute / Math.sqrt(variance)).toBeCloseTo(1, 1);
	});

	it('never gives a speed outside natural walking, or below natural running, whoever asks', () => {
		const fractions = fc
			.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
			.map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);
		fc.assert(
			fc.property(
				fc.constantFrom<Gait>('walk', 'run'),
				fractions,
				fc.double({ min: 7, max: 95, noNaN: true }),
				fc.double({ min: 0, max: 0.15, noNaN: true }),
				(gait, [lowFraction, highFraction], mlPerKgPerMinute, grade) => {
					const capacity = capacityOf(mlPerKgPerMinute, 3);
					const answer = speedForReserve({ gait, lowFraction, highFraction, capacity, grade });
					if (answer.kind !== 'range') return;
					const { lowMetresPerMinute, highMetresPerMinute } = answer;
					expect(lowMetresPerMinute).toBeLessThanOrEqual(highMetresPerMinute + 1e-9);
					const slowest = gait === 'walk' ? SLOWEST_WALK : SLOWEST_RUN;
					expect(lowMetresPerMinute).toBeGreaterThanOrEqual(slowest - 1e-9);
					if (gait === 'walk') expect(highMetresPerMinute).toBeLessThanOrEqual(FASTEST_WALK + 1e-9);
				}
			)
		);
	});

	it('gives a range whose speeds lie in the target they were asked for', () => {
		fc.assert(
			fc.property(fc.double({ min: 30, max: 60, noNaN: true }), (mlPerKgPerMinute) => {
				const answer = speedForReserve(
					target({
						gait: 'run',
						lowFraction: 0.5,
						highFraction: 0.62,
						capacity: capacityOf(mlPerKgPerMinute)
					})
				);
				if (answer.kind !== 'range') return;
				for (const speedMetresPerMinute of [
					answer.lowMetresPerMinute,
					answer.highMetresPerMinute
				]) {
					const uptake = oxygenUptake({ gait: 'run', speedMetresPerMinute, grade: 0 });
					const fraction = reserveFractionOfUptake(uptake, mlPerKgPerMinute);
					expect(fraction).toBeGreaterThanOrEqual(0.5 - 1e-9);
					expect(fraction).toBeLessThanOrEqual(0.62 + 1e-9);
				}
			})
		);
	});
});
