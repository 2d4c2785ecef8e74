import { describe, expect, test } from 'vitest';
import { wedge } from '$lib/components/swell.ts';

const band = { lowBpm: 122, highBpm: 135, lowSpreadBpm: 6, highSpreadBpm: 7 };

/** The x of every corner of a polygon. */
const across = (points: string) => points.split(' ').map((point) => Number(point.split(',')[0]));

describe('the swell', () => {
	// Rest 68, maximum 176: 122 is 54 of 108, 135 is 67 of 108.
	test('opens a gap where the band lies between resting and maximum', () => {
		const { edges, gap } = wedge(band, 68, 176);
		expect(edges).toEqual([500, 620.4]);
		expect(new Set(across(gap))).toEqual(new Set([500, 620.4]));
	});

	test('shades change at 30, 40, 60 and 90 % of reserve (Garber 2011), without a gap or overlap', () => {
		const { shades } = wedge(band, 68, 176);
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
		const [above, below] = wedge(band, 68, 176).hatches.map(across);
		expect(Math.max(...(above ?? []))).toBeCloseTo(((142 - 68) / 108) * 1000, 0);
		expect(Math.min(...(below ?? []))).toBeCloseTo(((116 - 68) / 108) * 1000, 0);
	});

	test('"anything under" opens from resting on and hatches only above', () => {
		const { edges, hatches } = wedge({ ...band, lowBpm: null, lowSpreadBpm: null }, 68, 176);
		expect(edges[0]).toBe(0);
		expect(hatches).toHaveLength(1);
	});

	test('stays inside its box when the doubt reaches beyond the maximum', () => {
		const { hatches } = wedge({ ...band, highBpm: 174, highSpreadBpm: 30 }, 68, 176);
		expect(Math.max(...hatches.flatMap(across))).toBe(1000);
	});
});
