import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	foxMaximum,
	gellishMaximum,
	maximumPredictions,
	nesMaximum
} from '../../../src/lib/physiology/comparison-maximum.ts';
import {
	ageMaximum,
	tanakaMaximum,
	testedMaximum,
	withHighestSeen
} from '../../../src/lib/physiology/maximum.ts';
import { roundHalfUp } from '../../../src/lib/physiology/units.ts';

const adult = fc.double({ min: 18, max: 100, noNaN: true });

describe('predictions of maximum pulse', () => {
	it.each(maximumPredictions)('fall with every year: $id', ({ predict }) => {
		fc.assert(
			fc.property(adult, fc.double({ min: 0.01, max: 20, noNaN: true }), (ageYears, later) => {
				expect(predict(ageYears + later)).toBeLessThan(predict(ageYears));
			})
		);
	});

	it.each(maximumPredictions)('refuse an age that nobody has: $id', ({ predict }) => {
		for (const ageYears of [-1, 121, NaN, Infinity]) {
			expect(() => predict(ageYears)).toThrow(RangeError);
		}
	});

	it('meet where their lines cross', () => {
		expect(foxMaximum(40)).toBe(tanakaMaximum(40));
		expect(foxMaximum(25)).toBe(nesMaximum(25));
	});

	it('leave the old line too high for the young and too low for the old (Jackson 2007)', () => {
		expect(foxMaximum(25)).toBeGreaterThan(gellishMaximum(25));
		expect(foxMaximum(60)).toBeLessThan(gellishMaximum(60));
	});

	it('are shown with a half going up', () => {
		expect(roundHalfUp(tanakaMaximum(45))).toBe(177);
	});
});

describe('the maximum in use', () => {
	it('is by age, with the error of sedentary adults', () => {
		expect(ageMaximum(40)).toEqual({ bpm: 180, spreadBpm: 11.4, basis: 'age' });
	});

	it('or from a supervised test, with a small one', () => {
		expect(testedMaximum(171)).toEqual({ bpm: 171, spreadBpm: 3, basis: 'supervised-test' });
	});

	it('is never a number that no maximum can be', () => {
		for (const bpm of [60, 99, 231, NaN]) {
			expect(() => testedMaximum(bpm)).toThrow('testedMaximum requires');
		}
	});
});

describe('a trusted high pulse', () => {
	it('lifts an estimate above itself and makes it surer', () => {
		fc.assert(
			fc.property(adult, fc.double({ min: 25, max: 230, noNaN: true }), (ageYears, seenBpm) => {
				const before = ageMaximum(ageYears);
				const after = withHighestSeen(before, seenBpm);
				expect(after.basis).toBe('age-and-highest-seen');
				expect(after.bpm).toBeGreaterThanOrEqual(Math.max(before.bpm, seenBpm) - 1e-9);
				expect(after.spreadBpm).toBeLessThanOrEqual(before.spreadBpm);
			})
		);
	});

	it('lifts the more the higher it is', () => {
		const lifted = [120, 150, 170, 180, 190, 210].map(
			(bpm) => withHighestSeen(ageMaximum(40), bpm).bpm
		);
		expect([...lifted].sort((a, b) => a - b)).toEqual(lifted);
		expect(new Set(lifted).size).toBe(lifted.length);
	});

	it('does nothing to a maximum from a supervised test', () => {
		const tested = Object.freeze(testedMaximum(171));
		expect(withHighestSeen(tested, 185)).toBe(tested);
	});

	it('is not counted twice', () => {
		const once = withHighestSeen(ageMaximum(40), 175);
		expect(() => withHighestSeen(once, 185)).toThrow('withHighestSeen requires');
	});

	it('must be a pulse', () => {
		for (const bpm of [0, 24, 231, NaN]) {
			expect(() => withHighestSeen(ageMaximum(40), bpm)).toThrow('withHighestSeen requires');
		}
	});
});
