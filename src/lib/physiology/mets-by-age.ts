import { intensityAmong, type CutPoints, type Intensity } from './intensity.ts';
import { limits } from './limits.ts';

export interface MetsByAge {
	/** Whole years, the first age of the group. */
	readonly fromYears: number;
	/** The first age of the next group; null for the oldest. */
	readonly belowYears: number | null;
	readonly cutPoints: CutPoints;
}

/**
 * Absolute METs at which the classes begin, by age (source garber2011, from memory). They are 20, 40,
 * 60 and 85 % of a capacity of 12, 10 and 8 METs: an older scheme than the reserve column, with which
 * it therefore does not agree. The printed table begins at 20 years; adults of 18 and 19 are counted
 * with its first group, which is our own choice.
 */
export const metsByAge: readonly [MetsByAge, MetsByAge, MetsByAge] = [
	{ fromYears: 18, belowYears: 40, cutPoints: [2.4, 4.8, 7.2, 10.2] },
	{ fromYears: 40, belowYears: 65, cutPoints: [2, 4, 6, 8.5] },
	{ fromYears: 65, belowYears: null, cutPoints: [1.6, 3.2, 4.8, 6.8] }
];

/**
 * The class that an absolute load usually is at an age. For: the doctor's page, which gives a load in
 * METs. Source garber2011, adults of ordinary fitness for their age; says nothing of one person, whose
 * capacity may be half or double. One class off is usual.
 *
 * @throws RangeError under 18 years, or over the plausible age
 * @example intensityOfMetsAtAge(70, 5) // 'vigorous'
 * @example intensityOfMetsAtAge(30, 5) // 'moderate'
 */
export function intensityOfMetsAtAge(ageYears: number, mets: number): Intensity {
	const { low } = limits.ageYears.valid;
	if (!(ageYears >= low && ageYears <= limits.ageYears.plausible.high)) {
		throw new RangeError('intensityOfMetsAtAge requires an adult age');
	}
	const [young, middle, old] = metsByAge;
	const group = ageYears < middle.fromYears ? young : ageYears < old.fromYears ? middle : old;
	return intensityAmong(group.cutPoints, mets);
}
