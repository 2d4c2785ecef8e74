import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { efforts, isEffort } from '../../../src/lib/physiology/effort-scale.ts';
import { intensityOf } from '../../../src/lib/physiology/intensity.ts';
import {
	categoryRatioFromPerceived,
	perceivedFromCategoryRatio
} from '../../../src/lib/physiology/perceived-exertion.ts';
import { percentAlong, relations } from '../../../src/lib/physiology/reserve-relations.ts';
import {
	countingShare,
	countsToAimAt,
	sedentaryTalkStages
} from '../../../src/lib/physiology/talk-test.ts';

describe('the effort scale', () => {
	it('has eleven whole numbers and nothing else', () => {
		expect(efforts.every(isEffort)).toBe(true);
		for (const other of [-1, 11, 5.5, NaN, Infinity]) expect(isEffort(other)).toBe(false);
	});

	it('is moderate at 5 and 6 and vigorous from 7 (US Physical Activity Guidelines 2018)', () => {
		expect(efforts.filter((effort) => intensityOf('effort', effort) === 'moderate')).toEqual([
			5, 6
		]);
		expect(intensityOf('effort', 7)).toBe('vigorous');
	});

	it('is light at 3 and 4 and near-maximal from 9 (our own choice, no source)', () => {
		expect(efforts.filter((effort) => intensityOf('effort', effort) === 'light')).toEqual([3, 4]);
		expect(efforts.filter((effort) => intensityOf('effort', effort) === 'near-maximal')).toEqual([
			9, 10
		]);
	});
});

describe('the 6-20 and the category-ratio scale', () => {
	it('come back to where they started', () => {
		fc.assert(
			fc.property(fc.double({ min: 6, max: 20, noNaN: true }), (perceived) => {
				const there = categoryRatioFromPerceived(perceived);
				expect(perceivedFromCategoryRatio(there)).toBeCloseTo(perceived, 9);
			})
		);
	});

	it('rise together and stay on the scale', () => {
		const ratio = fc.double({ min: 0, max: 12, noNaN: true });
		fc.assert(
			fc.property(ratio, ratio, (one, other) => {
				const low = perceivedFromCategoryRatio(Math.min(one, other));
				const high = perceivedFromCategoryRatio(Math.max(one, other));
				expect(low).toBeLessThanOrEqual(high);
				expect(low).toBeGreaterThanOrEqual(6);
				expect(high).toBeLessThanOrEqual(20);
			})
		);
	});

	it('stand still beyond their ends', () => {
		expect(perceivedFromCategoryRatio(0)).toBe(6);
		expect(perceivedFromCategoryRatio(0.3)).toBe(6);
		expect(perceivedFromCategoryRatio(10)).toBe(20);
	});

	it('refuse ratings that they do not have', () => {
		expect(() => perceivedFromCategoryRatio(-0.1)).toThrow('perceivedFromCategoryRatio requires');
		for (const perceived of [5.9, 20.1, NaN]) {
			expect(() => categoryRatioFromPerceived(perceived)).toThrow(
				'categoryRatioFromPerceived requires'
			);
		}
	});
});

describe('pulse reserve against uptake reserve', () => {
	it('is near enough one to one on every machine: within five points from 30 to 90 %', () => {
		const percent = fc.double({ min: 30, max: 90, noNaN: true });
		fc.assert(
			fc.property(
				percent,
				fc.constantFrom('cycleReserve', 'treadmillReserve', 'ellipticalReserve'),
				(of, name) => {
					expect(Math.abs(percentAlong(name as keyof typeof relations, of) - of)).toBeLessThan(5);
				}
			)
		);
	});

	it('is not one to one with uptake itself: ten points lower at half of it', () => {
		expect(percentAlong('cycleUptake', 50)).toBeLessThan(45);
		expect(percentAlong('treadmillUptake', 50)).toBeLessThan(50);
	});

	it('follows the line that a regression draws through the means of the study (Swain 1994)', () => {
		const { m: slope, b: intercept } = linearRegression([
			[40, 63],
			[60, 76],
			[80, 89],
			[85, 92]
		]);
		expect(Math.abs(relations.treadmillMaximum.slope - slope)).toBeLessThan(0.01);
		expect(Math.abs(relations.treadmillMaximum.intercept - intercept)).toBeLessThan(0.7);
	});

	it('has no meaning outside 0 to 100 %', () => {
		for (const percent of [-1, 101, NaN]) {
			expect(() => percentAlong('cycleReserve', percent)).toThrow('percentAlong requires');
		}
	});
});

describe('counting on one breath', () => {
	it('aims at a share between 30 and 50 % of the count at rest', () => {
		fc.assert(
			fc.property(fc.integer({ min: 3, max: 80 }), (atRest) => {
				const { low, high } = countsToAimAt(atRest);
				expect(countingShare(low, atRest)).toBeGreaterThanOrEqual(0.3 - 1e-12);
				expect(countingShare(high, atRest)).toBeLessThanOrEqual(0.5 + 1e-12);
				expect(high - low).toBeCloseTo(atRest / 10, 9);
			})
		);
	});

	it('counts exactly 25 with the longer breaths', () => {
		expect(countsToAimAt(25)).toEqual({ low: 7.5, high: 10 });
		expect(countsToAimAt(24)).toEqual({ low: 9.6, high: 12 });
	});

	it('needs a count at rest', () => {
		for (const atRest of [0, -1, NaN]) {
			expect(() => countingShare(5, atRest)).toThrow('countingShare requires');
			expect(() => countsToAimAt(atRest)).toThrow('countsToAimAt requires');
		}
		expect(() => countingShare(-1, 20)).toThrow('countingShare requires');
	});
});

describe('the talk stages of sedentary adults', () => {
	it('rise together in pulse, rating and talk score', () => {
		for (const measure of ['pulseBpm', 'maximumPercent', 'categoryRatio', 'talkScore'] as const) {
			const means = sedentaryTalkStages.map((stage) => stage[measure].mean);
			expect([...means].sort((a, b) => a - b)).toEqual(means);
		}
	});
});
