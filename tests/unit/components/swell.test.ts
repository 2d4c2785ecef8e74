import { describe, expect, test } from 'vitest';
import { sharesOf, wedge, type SwellBand } from '$lib/components/swell.ts';

const band = { lowBpm: 122, highBpm: 135, lowSpreadBpm: 6, highSpreadBpm: 7 };

const drawn = (of: SwellBand) => wedge(sharesOf(of, 68, 176));

/** The x of every corner of a polygon. */
const across = (points: string) => points.split(' ').map((point) => Number(point.split(',')[0]));

describe('the swell', () => {
	// Rest 68, maximum 176: 122 is 54 of 108, 135 is 67 of 108.
	test('opens a gap where the band lies between resting and maximum', () => {
		const { edges, gap } = drawn(band);
		expect(edges).toEqual([500, 620.4]);
		expect(new Set(across(gap))).toEqual(new Set([500, 620.4]));
	});

	test('shades change at 30, 40, 60 and 90 % of reserve (Garber 2011), without a gap or overlap', () => {
		const { shades } = drawn(band);
		const ends = shades.map(({ points }) => [
			Math.min(...across(points)),
			Math.max(...across(points))
		]);
		expect(ends).toEqual([
			[0, 300],
			[300, 400],
			[400, 600],
			[600, 900],
			[900, 1000]
		]);
	});

	test('hatches outside both edges, as far as each is unsure', () => {
		const [above, below] = drawn(band).hatches.map(across);
		expect(Math.max(...(above ?? []))).toBeCloseTo(((142 - 68) / 108) * 1000, 0);
		expect(Math.min(...(below ?? []))).toBeCloseTo(((116 - 68) / 108) * 1000, 0);
	});

	test('"anything under" opens from resting on and hatches only above', () => {
		const { edges, hatches } = drawn({ ...band, lowBpm: null, lowSpreadBpm: null });
		expect(edges[0]).toBe(0);
		expect(hatches).toHaveLength(1);
	});

	test('stays inside its box when the doubt reaches beyond the maximum', () => {
		const { hatches } = drawn({ ...band, highBpm: 174, highSpreadBpm: 30 });
		expect(Math.max(...hatches.flatMap(across))).toBe(1000);
	});
});
