import type { CapacityAnswer, SpeedCapacity } from '../physiology/capacity.ts';
import { mileWalk, type MileWalk } from '../physiology/mile-walk.ts';

/** A mile walk as it is kept: the age is that of the result. */
export interface WalkedMile extends Omit<MileWalk, 'ageYears' | 'sex'> {
	/** The equation knows two sexes; nobody has to say theirs. */
	readonly sex: MileWalk['sex'] | 'not-said';
}

/**
 * Capacity from a walked mile. The equation gives a man 6.3 mL/kg/min more than a woman who walked
 * the same: for whoever does not say, the lower of the two counts, which makes no speed too fast.
 *
 * @example mileCapacity({ weightKilograms: 68.0388555, sex: 'not-said', minutes: 16.5, pulseBpm: 140 }, 45).capacity.mlPerKgPerMinute // 28.0907
 */
export function mileCapacity(
	{ sex, ...walked }: WalkedMile,
	ageYears: number
): CapacityAnswer<SpeedCapacity> {
	return mileWalk({ ...walked, ageYears, sex: sex === 'not-said' ? 'female' : sex });
}
