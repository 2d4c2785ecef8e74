import type { CapacityAnswer, SpeedCapacity } from '../physiology/capacity.ts';
import { mileWalk, type MileWalk } from '../physiology/mile-walk.ts';

/** A mile walk as it is kept: the age is that of the result. */
export interface WalkedMile extends Omit<MileWalk, 'ageYears' | 'sex'> {
	/** The equation knows two sexes; nobody has to say theirs. */
	readonly sex: MileWalk['sex'] | 'not-said';
}

/**
 * What is kept of a mile walk, as the equation asks for it.
 *
 * @example walkedMile({ weightKilograms: 60, sex: null, minutes: 15, pulseBpm: 140 }).sex // 'not-said'
 */
export function walkedMile({
	weightKilograms,
	sex,
	minutes,
	pulseBpm
}: Omit<WalkedMile, 'sex'> & { readonly sex: 'woman' | 'man' | null }): WalkedMile {
	const asked = sex === null ? 'not-said' : sex === 'woman' ? 'female' : 'male';
	return { weightKilograms, sex: asked, minutes, pulseBpm };
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
