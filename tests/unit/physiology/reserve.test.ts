import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import {
	chanceOfAtLeast,
	reserveFractionAtMaximumFraction,
	reserveFractionOf,
	targetAtFraction
} from '../../../src/lib/physiology/reserve.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });
const spreadBpm = fc.double({ min: 0, max: 15, noNaN: true });
const restingBpm = fc.double({ min: 40, max: 100, noNaN: true });
const maximumBpm = fc.double({ min: 130, max: 210, noNaN: true });
const ends = fc.record({
	resting: fc.record({ bpm: restingBpm, spreadBpm }),
	maximum: fc.record({ bpm: maximumBpm, spreadBpm })
});

describe('target at a fraction of reserve', () => {
	it('is the resting pulse at 0 and the maximum at 1, with their own spreads', () => {
		const [resting, maximum] = [
			Object.freeze({ bpm: 63, spreadBpm: 3 }),
			Object.freeze({ bpm: 177, spreadBpm: 11.4 })
		];
		expect(targetAtFraction(0, resting, maximum)).toEqual(resting);
		expect(targetAtFraction(1, resting, maximum)).toEqual(maximum);
	});

	it('rises with the fraction and stays between rest and maximum', () => {
		fc.assert(
			fc.property(ends, fraction, fraction, ({ resting, maximum }, one, other) => {
				const [low, high] = one < other ? [one, other] : [other, one];
				const lower = targetAtFraction(low, resting, maximum).bpm;
				const upper = targetAtFraction(high, resting, maximum).bpm;
				expect(lower).toBeLessThanOrEqual(upper + 1e-9);
				expect(lower).toBeGreaterThanOrEqual(resting.bpm - 1e-9);
				expect(upper).toBeLessThanOrEqual(maximum.bpm + 1e-9);
			})
		);
	});

	it('comes back from the pulse that it gives', () => {
		fc.assert(
			fc.property(ends, fraction, ({ resting, maximum }, of) => {
				const { bpm } = targetAtFraction(of, resting, maximum);
				expect(reserveFractionOf(bpm, resting.bpm, maximum.bpm)).toBeCloseTo(of, 9);
			})
		);
	});

	it('is never surer when either end is less sure', () => {
		fc.assert(
			fc.property(ends, fraction, spreadBpm, ({ resting, maximum }, of, more) => {
				const before = targetAtFraction(of, resting, maximum).spreadBpm;
				const wider = (end: typeof resting) => ({ ...end, spreadBpm: end.spreadBpm + more });
				expect(targetAtFraction(of, resting, wider(maximum)).spreadBpm).toBeGreaterThanOrEqual(
					before - 1e-12
				);
				expect(targetAtFraction(of, wider(resting), maximum).spreadBpm).toBeGreaterThanOrEqual(
					before - 1e-12
				);
			})
		);
	});

	it('has no meaning outside 0 to 1, or where the maximum is not above rest', () => {
		const [resting, maximum] = [
			{ bpm: 70, spreadBpm: 3 },
			{ bpm: 180, spreadBpm: 10 }
		];
		for (const of of [-0.01, 1.01, 60, NaN]) {
			expect(() => targetAtFraction(of, resting, maximum)).toThrow('targetAtFraction requires');
		}
		expect(() => targetAtFraction(0.5, maximum, resting)).toThrow('targetAtFraction requires');
		expect(() => targetAtFraction(0.5, resting, resting)).toThrow('targetAtFraction requires');
	});
});

describe('fraction of reserve', () => {
	it('says so when a pulse lies under rest or over the maximum', () => {
		expect(reserveFractionOf(59, 70, 180)).toBeLessThan(0);
		expect(reserveFractionOf(191, 70, 180)).toBeGreaterThan(1);
	});

	it('has no meaning without a reserve', () => {
		expect(() => reserveFractionOf(100, 180, 180)).toThrow('reserveFractionOf requires');
		expect(() => reserveFractionOf(100, 180, NaN)).toThrow('reserveFractionOf requires');
	});

	it('is below the same fraction of maximum, but at the maximum itself', () => {
		fc.assert(
			fc.property(
				restingBpm,
				maximumBpm,
				fc.double({ min: 0.3, max: 0.99, noNaN: true }),
				(rest, maximum, of) => {
					expect(reserveFractionAtMaximumFraction(of, rest, maximum)).toBeLessThan(of);
					expect(reserveFractionAtMaximumFraction(1, rest, maximum)).toBe(1);
				}
			)
		);
	});
});

describe('chance of being at or above a fraction', () => {
	const [resting, maximum] = [
		{ bpm: 70, spreadBpm: 0 },
		{ bpm: 180, spreadBpm: 10 }
	];

	it('is the share of possible maxima that put the fraction at or below the pulse', () => {
		// 130 bpm is 60 % or more of reserve exactly where the maximum is 170 or less, one spread down.
		expect(chanceOfAtLeast(0.6, 130, resting, maximum)).toBeCloseTo(
			jStat.normal.cdf(170, 180, 10),
			12
		);
		const moderate =
			chanceOfAtLeast(0.4, 130, resting, maximum) - chanceOfAtLeast(0.6, 130, resting, maximum);
		expect(moderate).toBeCloseTo(0.841313, 6);
	});

	it('is one half at the target itself', () => {
		fc.assert(
			fc.property(ends, fraction, (of, at) => {
				const target = targetAtFraction(at, of.resting, of.maximum);
				fc.pre(target.spreadBpm > 0);
				expect(chanceOfAtLeast(at, target.bpm, of.resting, of.maximum)).toBeCloseTo(0.5, 9);
			})
		);
	});

	it('is certain without any spread', () => {
		const sure = { bpm: 180, spreadBpm: 0 };
		expect(chanceOfAtLeast(0.6, 136, resting, sure)).toBe(1);
		expect(chanceOfAtLeast(0.6, 135.9, resting, sure)).toBe(0);
	});
});
