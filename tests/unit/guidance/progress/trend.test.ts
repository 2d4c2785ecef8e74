import fc from 'fast-check';
import { jStat } from 'jstat';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { lineThrough, ninetiethOfStudent, type Point } from '$lib/guidance/progress/trend.ts';

// References: jstat for Student's distribution, simple-statistics for the line of least squares.

const points = (...values: readonly number[]): Point[] =>
	values.map((value, nth) => ({ day: 3 * nth, value }));

describe('the ninetieth percentile of Student’s t', () => {
	it('is that of another library', () => {
		for (let degrees = 1; degrees <= 20; degrees++) {
			expect(ninetiethOfStudent(degrees)).toBeCloseTo(jStat.studentt.inv(0.9, degrees), 3);
		}
	});

	it('is never too narrow beyond its table, and does not exist for none', () => {
		for (const degrees of [21, 30, 100]) {
			expect(ninetiethOfStudent(degrees)).toBeGreaterThan(jStat.studentt.inv(0.9, degrees));
		}
		expect(() => ninetiethOfStudent(0)).toThrow(RangeError);
	});
});

describe('a line through points', () => {
	it('needs three points of two days', () => {
		expect(() => lineThrough(points(1, 2))).toThrow('three points');
		const oneDay = [1, 2, 3].map((value) => ({ day: 4, value }));
		expect(() => lineThrough(oneDay)).toThrow('two days');
	});

	it('has no doubt where all points lie on it', () => {
		const { perDay, lowPerDay, highPerDay, at } = lineThrough(points(5, 5.3, 5.6, 5.9));
		for (const one of [perDay, lowPerDay, highPerDay]) expect(one).toBeCloseTo(0.1, 9);
		expect(at(9).value).toBeCloseTo(5.9, 9);
		expect(at(9).give).toBeCloseTo(0, 6);
	});

	it('is that of another library, and narrowest in its middle', () => {
		const value = fc.double({ min: 3, max: 12, noNaN: true });
		fc.assert(
			fc.property(fc.array(value, { minLength: 3, maxLength: 30 }), (values) => {
				const { perDay, lowPerDay, highPerDay, at } = lineThrough(points(...values));
				const { m, b } = linearRegression(points(...values).map((one) => [one.day, one.value]));
				expect(perDay).toBeCloseTo(m, 8);
				expect(at(0).value).toBeCloseTo(b, 7);
				expect(lowPerDay).toBeLessThanOrEqual(perDay);
				expect(highPerDay).toBeGreaterThanOrEqual(perDay);
				const middle = (3 * (values.length - 1)) / 2;
				expect(at(middle).give).toBeLessThanOrEqual(at(0).give + 1e-9);
			})
		);
	});

	it('has the interval of the textbook: a worked sum by hand', () => {
		// Days 0, 3, 6, 9 and values 5.0, 5.4, 5.2, 5.8: slope 0.22 / 3 = 0.07333; what is left over
		// squares to 0.108; 2 degrees of freedom; 45 across. Worked out apart from this code.
		const { perDay, highPerDay } = lineThrough(points(5, 5.4, 5.2, 5.8));
		expect(perDay).toBeCloseTo(0.073333, 5);
		expect(highPerDay - perDay).toBeCloseTo((1.886 * Math.sqrt(0.108 / 2)) / Math.sqrt(45), 3);
	});
});
