import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { truncatedBelow } from '../../../src/lib/physiology/truncated-normal.ts';

/** Mean and spread by Simpson's rule over what is left, with a library's density. */
function integrated(mean: number, spread: number, bound: number) {
	const from = Math.max(bound, mean - 12 * spread);
	// Far out the density falls within spread^2 / (bound - mean): forty such lengths are all of it.
	const length = Math.min(12 * spread, (40 * spread ** 2) / Math.max(spread / 4, bound - mean));
	const to = Math.max(from, mean) + length;
	const parts = 20_000;
	const step = (to - from) / parts;
	const scale = jStat.normal.pdf(Math.max(from, mean), mean, spread);
	let [weight, first, second] = [0, 0, 0];
	for (let part = 0; part <= parts; part++) {
		const at = from + part * step;
		const share = part === 0 || part === parts ? 1 : part % 2 === 1 ? 4 : 2;
		const density = (share * jStat.normal.pdf(at, mean, spread)) / scale;
		weight += density;
		first += density * (at - from);
		second += density * (at - from) ** 2;
	}
	const above = first / weight;
	return { mean: from + above, spread: Math.sqrt(second / weight - above ** 2) };
}

const mean = fc.double({ min: 150, max: 200, noNaN: true });
const spread = fc.double({ min: 2, max: 15, noNaN: true });

describe('a normal distribution cut below a bound', () => {
	it('has the mean and spread that numeric integration finds', () => {
		fc.assert(
			fc.property(
				mean,
				spread,
				fc.double({ min: -4, max: 8, noNaN: true }),
				(centre, width, away) => {
					const bound = centre + away * width;
					const cut = truncatedBelow(centre, width, bound);
					const reference = integrated(centre, width, bound);
					expect(cut.mean).toBeCloseTo(reference.mean, 5);
					expect(cut.spread / reference.spread).toBeCloseTo(1, 4);
				}
			),
			{ numRuns: 60 }
		);
	});

	it('cut in its middle is the half-normal distribution', () => {
		const { mean: centre, spread: width } = truncatedBelow(0, 1, 0);
		expect(centre).toBeCloseTo(Math.sqrt(2 / Math.PI), 12);
		expect(width).toBeCloseTo(Math.sqrt(1 - 2 / Math.PI), 12);
	});

	it('is unchanged by a bound far below', () => {
		expect(truncatedBelow(180, 11.4, 60)).toEqual({ mean: 180, spread: 11.4 });
	});

	it('lies above the bound, no lower and no wider than before', () => {
		fc.assert(
			fc.property(
				mean,
				spread,
				fc.double({ min: 20, max: 400, noNaN: true }),
				(centre, width, bound) => {
					const cut = truncatedBelow(centre, width, bound);
					expect(cut.mean).toBeGreaterThan(bound);
					expect(cut.mean).toBeGreaterThanOrEqual(centre);
					expect(cut.spread).toBeLessThanOrEqual(width);
					expect(cut.spread).toBeGreaterThan(0);
				}
			)
		);
	});

	it('has no step where its two formulas meet', () => {
		const before = truncatedBelow(0, 1, 4 - 1e-9);
		const after = truncatedBelow(0, 1, 4 + 1e-9);
		expect(after.mean - before.mean).toBeCloseTo(0, 8);
		expect(after.spread - before.spread).toBeCloseTo(0, 8);
	});

	it('far out falls away like an exponential: its spread is one over the distance', () => {
		expect(truncatedBelow(0, 1, 1000).spread * 1000).toBeCloseTo(1, 4);
	});

	it('refuses a spread of nothing', () => {
		for (const width of [0, -1, NaN, Infinity]) {
			expect(() => truncatedBelow(180, width, 170)).toThrow('truncatedBelow requires');
		}
		expect(() => truncatedBelow(180, 10, -Infinity)).toThrow('truncatedBelow requires');
	});
});
