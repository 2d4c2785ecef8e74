import fc from 'fast-check';
import { jStat } from 'jstat';
import { errorFunction } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
	excessOfHazard,
	standardNormalCdf,
	standardNormalPdf,
	standardNormalQuantile
} from '../../../src/lib/physiology/normal-distribution.ts';

const z = fc.double({ min: -12, max: 12, noNaN: true });

describe('the standard normal distribution', () => {
	it('lies within 1e-14 of a statistics library, density and share', () => {
		fc.assert(
			fc.property(z, (at) => {
				expect(Math.abs(standardNormalCdf(at) - jStat.normal.cdf(at, 0, 1))).toBeLessThan(1e-14);
				expect(Math.abs(standardNormalPdf(at) - jStat.normal.pdf(at, 0, 1))).toBeLessThan(1e-14);
			}),
			{ numRuns: 500 }
		);
	});

	it('lies within 1e-7 of a second library, which is no closer than that itself', () => {
		fc.assert(
			fc.property(z, (at) => {
				const share = 0.5 + errorFunction(at / Math.SQRT2) / 2;
				expect(Math.abs(standardNormalCdf(at) - share)).toBeLessThan(1e-7);
			})
		);
	});

	// Half the complementary error function of z / sqrt(2), from another language's mathematics library.
	it.each([
		[-3, 0.0013498980316300957],
		[-5, 2.866515718791946e-7],
		[-7, 1.279812543885835e-12],
		[-8, 6.220960574271819e-16],
		[-10, 7.619853024160593e-24],
		[-30, 4.906713927148764e-198]
	])('keeps its leading digits far out: at %d it is %d', (at, share) => {
		expect(standardNormalCdf(at) / share).toBeCloseTo(1, 8);
	});

	it('has no step where its two formulas meet', () => {
		const edge = -5 * Math.SQRT2;
		const ratio = standardNormalCdf(edge - 1e-12) / standardNormalCdf(edge + 1e-12);
		expect(ratio).toBeCloseTo(1, 8);
	});

	it('adds up to one from both sides', () => {
		fc.assert(
			fc.property(z, (at) => {
				expect(standardNormalCdf(at) + standardNormalCdf(-at)).toBeCloseTo(1, 14);
			})
		);
	});

	it('never falls', () => {
		fc.assert(
			fc.property(z, fc.double({ min: 0, max: 3, noNaN: true }), (at, step) => {
				expect(standardNormalCdf(at + step)).toBeGreaterThanOrEqual(standardNormalCdf(at) - 1e-16);
			})
		);
	});

	it('ends in 0 and 1, and passes on what is not a number', () => {
		expect(standardNormalCdf(-Infinity)).toBe(0);
		expect(standardNormalCdf(Infinity)).toBe(1);
		expect(standardNormalCdf(-40)).toBe(0);
		expect(standardNormalCdf(NaN)).toBeNaN();
	});
});

describe('the quantile', () => {
	it('undoes the share', () => {
		fc.assert(
			fc.property(fc.double({ min: -8, max: 5, noNaN: true }), (at) => {
				expect(standardNormalQuantile(standardNormalCdf(at))).toBeCloseTo(at, 8);
			})
		);
	});

	// Well-known percentage points; from memory, as in any table of the distribution.
	it.each([
		[0.5, 0],
		[0.8, 0.8416212335729143],
		[0.9, 1.2815515655446004],
		[0.975, 1.959963984540054],
		[0.995, 2.5758293035489004],
		[1e-9, -5.997807015008182]
	])('of %d is %d', (share, at) => {
		expect(standardNormalQuantile(share)).toBeCloseTo(at, 12);
	});

	it('agrees with a statistics library', () => {
		fc.assert(
			fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (share) => {
				expect(standardNormalQuantile(share)).toBeCloseTo(jStat.normal.inv(share, 0, 1), 7);
			})
		);
	});

	it('is infinite at 0 and 1, and has nothing to say beyond', () => {
		expect(standardNormalQuantile(0)).toBe(-Infinity);
		expect(standardNormalQuantile(1)).toBe(Infinity);
		for (const share of [-0.1, 1.1, NaN]) {
			expect(() => standardNormalQuantile(share)).toThrow('standardNormalQuantile requires');
		}
	});
});

describe('the hazard of the upper tail', () => {
	// Further out the library's own share loses its leading digits.
	it('by continued fraction is density over share', () => {
		fc.assert(
			fc.property(fc.double({ min: 4, max: 5.5, noNaN: true }), (at) => {
				const hazard = jStat.normal.pdf(at, 0, 1) / jStat.normal.cdf(-at, 0, 1);
				expect((at + excessOfHazard(at, 1)) / hazard).toBeCloseTo(1, 6);
			})
		);
	});
});
