import { plausibleOrRefused } from './capacity.ts';
import type { Capacity, CapacityAnswer, CapacityRefusal } from './capacity.ts';
import { withinPlausible, withinValid } from './limits.ts';

export interface CapacityQuestions {
	/** The equation knows these two only. */
	readonly sex: 'female' | 'male';
	readonly ageYears: number;
	/** kg/m2 */
	readonly bodyMassIndex: number;
	/** Code of the month's activity, whole, 0 (avoids walking) to 7 (runs over 10 miles a week). */
	readonly activityLevel: number;
}

/** Standard error of the equation, mL/kg/min: 5.6 in its abstract, 5.7 where it was reprinted. */
export const JACKSON_SPREAD = 5.7;

/**
 * Capacity from four questions, without exercise (Jackson's equation with body mass index). For: the
 * doctor's page and the expected curve before anything was measured. It never sets a speed.
 * In words: 56.363, plus 1.921 for each activity level, less 0.381 for each year of age, less 0.754
 * for each unit of body mass index, plus 10.987 for men.
 * Source jackson1990, 2,009 adults, one in ten of them women. Not under 18, and not for very low
 * capacities: what comes out implausible is refused. Typical error 5.7 mL/kg/min.
 *
 * @returns a capacity of basis 'questions', or the fields that are implausible or outside the study
 * @example jacksonCapacity({ sex: 'female', ageYears: 40, bodyMassIndex: 27, activityLevel: 2 }).capacity.mlPerKgPerMinute // 24.607
 */
export function jacksonCapacity(questions: CapacityQuestions): CapacityAnswer {
	const reasons = jacksonRefusals(questions);
	if (reasons.length > 0) return { kind: 'refused', reasons };
	const { sex, ageYears, bodyMassIndex, activityLevel } = questions;
	const capacity: Capacity = {
		mlPerKgPerMinute:
			56.363 +
			1.921 * activityLevel -
			0.381 * ageYears -
			0.754 * bodyMassIndex +
			(sex === 'male' ? 10.987 : 0),
		spread: JACKSON_SPREAD,
		basis: 'questions'
	};
	return plausibleOrRefused(capacity);
}

function jacksonRefusals(questions: CapacityQuestions): CapacityRefusal[] {
	const reasons: CapacityRefusal[] = [];
	if (!withinPlausible('ageYears', questions.ageYears)) {
		reasons.push({ code: 'out-of-limits', field: 'ageYears' });
	} else if (!withinValid('ageYears', questions.ageYears)) {
		reasons.push({ code: 'outside-study', field: 'ageYears' });
	}
	if (!withinPlausible('bodyMassIndex', questions.bodyMassIndex)) {
		reasons.push({ code: 'out-of-limits', field: 'bodyMassIndex' });
	}
	const level = questions.activityLevel;
	if (!Number.isInteger(level) || !withinPlausible('activityLevel', level)) {
		reasons.push({ code: 'out-of-limits', field: 'activityLevel' });
	}
	return reasons;
}
