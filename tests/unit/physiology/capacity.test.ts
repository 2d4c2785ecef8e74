import { describe, expect, it } from 'vitest';
import { givesSpeed, measuredCapacity, type CapacityBasis } from '$lib/physiology/capacity.ts';

describe('capacity', () => {
	it('gives a speed from everything that was measured, and never from questions alone', () => {
		const bases: CapacityBasis[] = ['measured', 'past-outings', 'mile-walk', 'walk-check'];
		for (const basis of bases) {
			expect(givesSpeed({ mlPerKgPerMinute: 30, spread: 3, basis })).toBe(true);
		}
		expect(givesSpeed({ mlPerKgPerMinute: 30, spread: 0, basis: 'questions' })).toBe(false);
	});

	it('refuses a measured capacity that nobody has, and names the field', () => {
		for (const mistyped of [0, -35, 3.5, 350, NaN, Infinity]) {
			expect(measuredCapacity(mistyped)).toEqual({
				kind: 'refused',
				reasons: [{ code: 'out-of-limits', field: 'capacity' }]
			});
		}
	});

	it('keeps a measured capacity as it is', () => {
		expect(measuredCapacity(35)).toEqual({
			kind: 'capacity',
			capacity: { mlPerKgPerMinute: 35, spread: expect.closeTo(1.96, 9), basis: 'measured' }
		});
	});
});
