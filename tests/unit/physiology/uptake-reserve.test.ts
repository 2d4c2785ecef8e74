import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reserveFractionOfUptake, uptakeAtReserve } from '$lib/physiology/uptake-reserve.ts';

const capacities = fc.double({ min: 7, max: 95, noNaN: true });

describe('uptake reserve', () => {
	it('begins at rest and ends at capacity', () => {
		expect(uptakeAtReserve(0, 35)).toBe(3.5);
		expect(uptakeAtReserve(1, 35)).toBe(35);
	});

	it('refuses a fraction outside 0 to 1 and a capacity that nobody has', () => {
		for (const fraction of [-0.01, 1.01, 40, NaN]) {
			expect(() => uptakeAtReserve(fraction, 35)).toThrow(RangeError);
		}
		for (const capacity of [3.5, 0, 350, NaN]) {
			expect(() => uptakeAtReserve(0.5, capacity)).toThrow(RangeError);
			expect(() => reserveFractionOfUptake(20, capacity)).toThrow(RangeError);
		}
	});

	it('says by how much an effort is beyond a person instead of stopping at the whole', () => {
		expect(reserveFractionOfUptake(30, 25)).toBeCloseTo(1.2326, 4);
		expect(reserveFractionOfUptake(3, 25)).toBeLessThan(0);
	});

	it('leads from fraction to uptake and back', () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 1, noNaN: true }), capacities, (fraction, capacity) => {
				const uptake = uptakeAtReserve(fraction, capacity);
				expect(reserveFractionOfUptake(uptake, capacity)).toBeCloseTo(fraction, 9);
			})
		);
	});

	// Per cent of capacity = (1 + f (M - 1)) / M with M the capacity in METs: the same thing, said in METs.
	it('matches its form in METs', () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 1, noNaN: true }), capacities, (fraction, capacity) => {
				const mets = capacity / 3.5;
				const ofCapacity = (1 + fraction * (mets - 1)) / mets;
				expect(uptakeAtReserve(fraction, capacity)).toBeCloseTo(ofCapacity * capacity, 9);
			})
		);
	});
});
