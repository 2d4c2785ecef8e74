import { withinPlausible } from './limits.ts';

/** Where a capacity comes from, the surest first. */
export type CapacityBasis = 'measured' | 'past-outings' | 'mile-walk' | 'walk-check' | 'questions';

/** Highest oxygen uptake (VO2max) of a person, with how sure it is. */
export interface Capacity {
	readonly mlPerKgPerMinute: number;
	/** One standard deviation, mL/kg/min. */
	readonly spread: number;
	readonly basis: CapacityBasis;
}

/** A capacity as an expected pulse needs it: where it comes from weighs nothing there. */
export type WeighedCapacity = Pick<Capacity, 'mlPerKgPerMinute' | 'spread'>;

/** A capacity that is sure enough to set a speed. */
export type SpeedCapacity = Capacity & { readonly basis: Exclude<CapacityBasis, 'questions'> };

export type CapacityRefusalCode =
	| 'out-of-limits'
	| 'outside-study'
	| 'pulse-for-a-full-minute'
	| 'not-enough-stages'
	| 'pulse-does-not-rise'
	| 'pulse-rises-too-little'
	| 'pulse-above-maximum'
	| 'too-unsure';

/** Why no capacity is given, and the field that a person can look at again. */
export interface CapacityRefusal {
	readonly code: CapacityRefusalCode;
	readonly field: string;
}

export type CapacityAnswer<Known extends Capacity = Capacity> =
	| { readonly kind: 'capacity'; readonly capacity: Known }
	| { readonly kind: 'refused'; readonly reasons: readonly CapacityRefusal[] };

/**
 * Whether a speed may be set from this capacity. Not from questions alone: they miss by 5.7
 * mL/kg/min (source jackson1990), a fifth of a beginner's capacity.
 * @example givesSpeed({ mlPerKgPerMinute: 30, spread: 5.7, basis: 'questions' }) // false
 */
export function givesSpeed(capacity: Capacity): capacity is SpeedCapacity {
	return capacity.basis !== 'questions';
}

/** Day-to-day and instrument error of a measured capacity, as a fraction of it. */
export const MEASURED_ERROR_FRACTION = 0.056;

/**
 * A capacity that a laboratory measured, as it is. For: a runner who brings one; nobody is asked to
 * make a maximal test for this. Source katch1982, 80 repeated treadmill tests of five trained people
 * within four weeks: one person's results varied by 5.6 %. Months later it no longer holds.
 *
 * @param mlPerKgPerMinute as the laboratory gave it; an implausible one is refused
 * @example measuredCapacity(35).kind // 'capacity'
 * @example measuredCapacity(350).kind // 'refused'
 */
export function measuredCapacity(mlPerKgPerMinute: number): CapacityAnswer<SpeedCapacity> {
	const spread = MEASURED_ERROR_FRACTION * mlPerKgPerMinute;
	return plausibleOrRefused({ mlPerKgPerMinute, spread, basis: 'measured' });
}

/**
 * The capacity as an answer, unless nobody has such a one: then a number behind it is mistaken.
 * @example plausibleOrRefused({ mlPerKgPerMinute: 2, spread: 5.7, basis: 'questions' }).kind // 'refused'
 */
export function plausibleOrRefused<Known extends Capacity>(capacity: Known): CapacityAnswer<Known> {
	if (withinPlausible('capacity', capacity.mlPerKgPerMinute)) {
		return { kind: 'capacity', capacity };
	}
	return { kind: 'refused', reasons: [{ code: 'out-of-limits', field: 'capacity' }] };
}
