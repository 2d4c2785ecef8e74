import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { leastSquaresLine, lineStandardError } from '$lib/physiology/least-squares.ts';

const pointsOf = (pairs: readonly (readonly [number, number])[]) =>
	pairs.map(([across, up]) => ({ across, up }));

describe('least-squares line', () => {
	it('needs three points at more than one place', () => {
		expect(() => leastSquaresLine([])).toThrow(RangeError);
		expect(() =>
			leastSquaresLine(
				pointsOf([
					[1, 1],
					[2, 2]
				])
			)
		).toThrow(RangeError);
		expect(() =>
			leastSquaresLine(
				pointsOf([
					[1, 1],
					[1, 2],
					[1, 3]
				])
			)
		).toThrow(RangeError);
	});

	it('has no scatter about points on a line', () => {
		const line = leastSquaresLine(
			pointsOf([
				[1, 3],
				[2, 5],
				[4, 9]
			])
		);
		expect(line.slope).toBeCloseTo(2, 12);
		expect(line.intercept).toBeCloseTo(1, 12);
		expect(line.scatter).toBeCloseTo(0, 12);
	});

	it('is the line of a general statistics library', () => {
		const places = fc.integer({ min: 60, max: 200 });
		const heights = fc.double({ min: 5, max: 60, noNaN: true });
		fc.assert(
			fc.property(
				fc.uniqueArray(fc.tuple(places, heights), {
					minLength: 3,
					maxLength: 12,
					selector: ([place]) => place
				}),
				(pairs) => {
					const { m, b } = linearRegression(pairs.map((pair) => [...pair]));
					const line = leastSquaresLine(pointsOf(pairs));
					expect(line.slope).toBeCloseTo(m, 6);
					expect(line.intercept).toBeCloseTo(b, 4);
				}
			)
		);
	});

	it('has the residual error of two degrees of freedom lost', () => {
		const line = leastSquaresLine(
			pointsOf([
				[0, 1],
				[1, 2],
				[2, 4],
				[3, 4]
			])
		);
		// Sum of squares about 1.1 x + 1.1 is 0.7; 0.7 / 2 degrees of freedom.
		expect(line.slope).toBeCloseTo(1.1, 12);
		expect(line.scatter).toBeCloseTo(Math.sqrt(0.35), 12);
	});

	it('is surest at the mean of its points and less sure the farther away', () => {
		const line = leastSquaresLine(
			pointsOf([
				[98, 11.5],
				[106, 12.9],
				[115, 14.2]
			])
		);
		const atMean = lineStandardError(line, line.meanAcross);
		expect(atMean).toBeCloseTo(line.scatter / Math.sqrt(3), 12);
		expect(lineStandardError(line, 130)).toBeGreaterThan(atMean);
		expect(lineStandardError(line, 180)).toBeGreaterThan(lineStandardError(line, 130));
	});
});
