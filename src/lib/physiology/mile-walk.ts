import { plausibleOrRefused } from './capacity.ts';
import type { CapacityAnswer, CapacityRefusal, SpeedCapacity } from './capacity.ts';
import { withinPlausible } from './limits.ts';
import type { LimitName } from './limits.ts';
import { KILOGRAMS_PER_POUND } from './units.ts';

export interface MileWalk {
	readonly weightKilograms: number;
	readonly ageYears: number;
	/** The equation knows these two only. */
	readonly sex: 'female' | 'male';
	/** Time for the mile, in minutes with decimals: 14 min 30 s is 14.5. */
	readonly minutes: number;
	/** Mean pulse of the last quarter mile, in beats a minute, never in beats of a short count. */
	readonly pulseBpm: number;
}

/** Ages that were measured. Younger adults were misjudged in a later study (source kellerThesis). */
export const MILE_WALK_AGE_YEARS = { low: 30, high: 69 };

/**
 * After a fast mile no adult's pulse is under 60, and no count of 15 s or less reaches 60: the most
 * plausible pulse, 230, gives 57 beats in 15 s. So what is under 60 is a short count.
 */
const SLOWEST_PULSE_BPM = 60;

/** Standard error for one person, mL/kg/min. From memory; 0.325 L/min in the abstract. */
export const MILE_WALK_SPREAD = 5;

/**
 * Capacity from a level mile walked as fast as possible (Kline's generalised equation). For: a speed
 * without a treadmill. It is hard effort: only for people who may do that.
 * In words: 132.853, less 0.0769 for each pound, less 0.3877 for each year, plus 6.315 for men, less
 * 3.2649 for each minute, less 0.1565 for each beat a minute.
 * Source kline1987, 343 healthy adults of 30 to 69 years; coefficients per kilogram as reprinted.
 * Not valid at other ages, with a jog in it, or with medicines that slow the heart. Typical error 5
 * mL/kg/min (from memory).
 *
 * @returns a capacity of basis 'mile-walk', or the fields that are implausible or outside the study
 * @example mileWalk({ weightKilograms: 68.0388555, ageYears: 45, sex: 'female', minutes: 16.5, pulseBpm: 140 }).capacity.mlPerKgPerMinute // 28.0907
 */
export function mileWalk(walk: MileWalk): CapacityAnswer<SpeedCapacity> {
	const reasons = mileWalkRefusals(walk);
	if (reasons.length > 0) return { kind: 'refused', reasons };
	return plausibleOrRefused({
		mlPerKgPerMinute:
			132.853 -
			(0.0769 * walk.weightKilograms) / KILOGRAMS_PER_POUND -
			0.3877 * walk.ageYears +
			(walk.sex === 'male' ? 6.315 : 0) -
			3.2649 * walk.minutes -
			0.1565 * walk.pulseBpm,
		spread: MILE_WALK_SPREAD,
		basis: 'mile-walk'
	});
}

function mileWalkRefusals(walk: MileWalk): CapacityRefusal[] {
	const reasons: CapacityRefusal[] = [];
	const need = (limit: LimitName, field: keyof MileWalk, entered: number) => {
		if (withinPlausible(limit, entered)) return true;
		reasons.push({ code: 'out-of-limits', field });
		return false;
	};
	need('weightKilograms', 'weightKilograms', walk.weightKilograms);
	if (need('ageYears', 'ageYears', walk.ageYears)) {
		const { low, high } = MILE_WALK_AGE_YEARS;
		if (walk.ageYears < low || walk.ageYears > high) {
			reasons.push({ code: 'outside-study', field: 'ageYears' });
		}
	}
	need('mileWalkMinutes', 'minutes', walk.minutes);
	if (walk.pulseBpm > 0 && walk.pulseBpm < SLOWEST_PULSE_BPM) {
		reasons.push({ code: 'pulse-for-a-full-minute', field: 'pulseBpm' });
	} else {
		need('pulseBpm', 'pulseBpm', walk.pulseBpm);
	}
	return reasons;
}
