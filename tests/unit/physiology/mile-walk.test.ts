import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { mileWalk, type MileWalk } from '$lib/physiology/mile-walk.ts';

const walk: MileWalk = {
	weightKilograms: Qty('130 lb').to('kg').scalar,
	ageYears: 52,
	sex: 'female',
	minutes: 12.75,
	pulseBpm: 147
};

describe('one-mile walk', () => {
	it('names every field that is wrong, all at once', () => {
		expect(
			mileWalk({ sex: 'male', weightKilograms: 7, ageYears: 0.5, minutes: 4, pulseBpm: 400 })
		).toEqual({
			kind: 'refused',
			reasons: [
				{ code: 'out-of-limits', field: 'weightKilograms' },
				{ code: 'outside-study', field: 'ageYears' },
				{ code: 'out-of-limits', field: 'minutes' },
				{ code: 'out-of-limits', field: 'pulseBpm' }
			]
		});
		expect(mileWalk({ ...walk, pulseBpm: NaN })).toMatchObject({ kind: 'refused' });
		expect(mileWalk({ ...walk, pulseBpm: 0 })).toMatchObject({
			reasons: [{ code: 'out-of-limits', field: 'pulseBpm' }]
		});
	});

	it('converts kilograms, and does not take pounds for them', () => {
		expect(mileWalk(walk)).toMatchObject({
			capacity: { mlPerKgPerMinute: expect.closeTo(38.0626, 3) }
		});
		expect(mileWalk({ ...walk, weightKilograms: 130 })).toMatchObject({
			capacity: { mlPerKgPerMinute: expect.closeTo(26.0191, 1) }
		});
	});

	it('never takes the beats of a short count for beats a minute', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 60, max: 230 }),
				fc.constantFrom(6, 10, 15),
				(pulseBpm, countSeconds) => {
					const counted = (pulseBpm * countSeconds) / 60;
					expect(mileWalk({ ...walk, pulseBpm: counted })).toEqual({
						kind: 'refused',
						reasons: [{ code: 'pulse-for-a-full-minute', field: 'pulseBpm' }]
					});
				}
			)
		);
	});

	it('is for the ages that were studied, 30 to 69', () => {
		for (const ageYears of [30, 69]) {
			expect(mileWalk({ ...walk, ageYears })).toMatchObject({ kind: 'capacity' });
		}
		for (const ageYears of [29, 70]) {
			expect(mileWalk({ ...walk, ageYears })).toMatchObject({
				reasons: [{ code: 'outside-study', field: 'ageYears' }]
			});
		}
	});

	it('falls with time, pulse, weight and age', () => {
		const capacityOf = (change: Partial<MileWalk>) => {
			const answer = mileWalk({ ...walk, ...change });
			return answer.kind === 'capacity' ? answer.capacity.mlPerKgPerMinute : NaN;
		};
		expect(capacityOf({ minutes: 13.75 })).toBeLessThan(capacityOf({}));
		expect(capacityOf({ pulseBpm: 157 })).toBeLessThan(capacityOf({}));
		expect(capacityOf({ weightKilograms: 70 })).toBeLessThan(capacityOf({}));
		expect(capacityOf({ ageYears: 62 })).toBeLessThan(capacityOf({}));
	});
});
