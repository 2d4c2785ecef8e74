import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { mileCapacity, type WalkedMile } from '$lib/guidance/mile-capacity.ts';

const capacityOf = (walked: WalkedMile, ageYears: number) => {
	const answer = mileCapacity(walked, ageYears);
	return answer.kind === 'capacity' ? answer.capacity.mlPerKgPerMinute : NaN;
};
const pounds = (amount: number) => Qty(amount, 'lb').to('kg').scalar;

describe('capacity from a walked mile, as it is kept', () => {
	// The equation of Kline 1987, worked through for three people (computed); the third is the one
	// for whom a public answer gives 57.234, with beats of 10 seconds in the place of a minute.
	it.each([
		['male', 35, 170, 14, 120, 48.0369],
		['female', 45, 150, 16.5, 140, 28.0907],
		['female', 52, 130, 12.75, 147, 38.0626]
	] as const)('of a %s of %i, %i lb: %f min at %i', (sex, age, weight, minutes, pulseBpm, is) => {
		expect(
			capacityOf({ sex, weightKilograms: pounds(weight), minutes, pulseBpm }, age)
		).toBeCloseTo(is, 3);
	});

	it('is the lower of the two for whoever does not say their sex', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 45, max: 120 }),
				fc.integer({ min: 11, max: 20 }),
				fc.integer({ min: 90, max: 170 }),
				(weightKilograms, minutes, pulseBpm) => {
					const walked = { weightKilograms, minutes, pulseBpm };
					const [open, her, his] = (['not-said', 'female', 'male'] as const).map((sex) =>
						capacityOf({ ...walked, sex }, 45)
					);
					fc.pre(!Number.isNaN(his));
					expect(open).toBe(her);
					if (!Number.isNaN(her)) expect(his! - her!).toBeCloseTo(6.315, 9);
				}
			)
		);
	});

	it('follows the age of the result, and ends with the ages that were measured', () => {
		const walked = { sex: 'female', weightKilograms: 60, minutes: 14, pulseBpm: 140 } as const;
		expect(capacityOf(walked, 45) - capacityOf(walked, 46)).toBeCloseTo(0.3877, 9);
		expect(capacityOf(walked, 70)).toBeNaN();
	});
});
