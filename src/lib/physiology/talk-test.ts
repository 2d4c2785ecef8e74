/** From this count at rest on, a smaller share of it is aimed at (source loose2012). */
export const LONG_BREATH_COUNT = 25;

/**
 * Share of the count at rest that was reached during effort. For: an exercise in which one breath is
 * counted on, "one one-thousand, two one-thousand", as far as it goes.
 *
 * The count during effort over the count at rest. Source norman2001 (34 healthy adults of 20 to 31
 * years); it went with per cent of reserve at r = -0.93 in norman2008 (40 of about 22 years). Not
 * checked in older beginners. Error: a count either way is 3 to 5 points.
 *
 * @param counted highest number reached on one breath during effort
 * @param countedAtRest the same at rest, above zero
 * @returns a fraction, 1 where effort costs no breath at all
 * @throws RangeError for a count below zero, or nothing counted at rest
 * @example countingShare(9, 20) // 0.45
 */
export function countingShare(counted: number, countedAtRest: number): number {
	if (!(counted >= 0)) throw new RangeError('countingShare requires a count of 0 or more');
	if (!(countedAtRest > 0)) throw new RangeError('countingShare requires a count at rest');
	return counted / countedAtRest;
}

/**
 * Count on one breath that goes with moderate to vigorous effort: 40 to 50 % of the count at rest
 * for those who reach less than 25 at rest, 30 to 40 % for the others. Source loose2012 (36 healthy
 * young adults; abstracts print both "25 and under" and "under 25", so 25 itself counts with the
 * others here). Same limits and error as countingShare.
 *
 * @returns counts, not rounded
 * @throws RangeError for nothing counted at rest
 * @example countsToAimAt(20) // { low: 8, high: 10 }
 * @example countsToAimAt(30) // { low: 9, high: 12 }
 */
export function countsToAimAt(countedAtRest: number): { low: number; high: number } {
	if (!(countedAtRest > 0)) throw new RangeError('countsToAimAt requires a count at rest');
	const lowPercent = countedAtRest < LONG_BREATH_COUNT ? 40 : 30;
	return {
		low: (countedAtRest * lowPercent) / 100,
		high: (countedAtRest * (lowPercent + 10)) / 100
	};
}

/** Mean and one standard deviation between people. */
export interface MeasuredMean {
	readonly mean: number;
	readonly spread: number;
}

/** How many were measured in sedentaryTalkStages (source foster2009). */
export const SEDENTARY_TALKERS = 14;

/**
 * Twenty-minute bouts of 14 sedentary adults on a treadmill, at the stage before the last at which
 * they had talked comfortably in a test, at that stage, and at the first at which they were unsure
 * (source foster2009). The talk score is 1 comfortable, 2 slightly uncomfortable, 3 uncomfortable.
 * Why comfortable steady running is aimed near the first of them.
 */
export const sedentaryTalkStages: readonly {
	readonly stage: 'before-last-comfortable' | 'last-comfortable' | 'first-unsure';
	readonly pulseBpm: MeasuredMean;
	readonly maximumPercent: MeasuredMean;
	readonly categoryRatio: MeasuredMean;
	readonly talkScore: MeasuredMean;
}[] = [
	{
		stage: 'before-last-comfortable',
		pulseBpm: { mean: 140, spread: 23 },
		maximumPercent: { mean: 73, spread: 11 },
		categoryRatio: { mean: 3.6, spread: 1.5 },
		talkScore: { mean: 1.4, spread: 0.5 }
	},
	{
		stage: 'last-comfortable',
		pulseBpm: { mean: 151, spread: 20 },
		maximumPercent: { mean: 79, spread: 9 },
		categoryRatio: { mean: 4.4, spread: 1.8 },
		talkScore: { mean: 1.8, spread: 0.4 }
	},
	{
		stage: 'first-unsure',
		pulseBpm: { mean: 160, spread: 21 },
		maximumPercent: { mean: 82, spread: 9 },
		categoryRatio: { mean: 6.3, spread: 2.2 },
		talkScore: { mean: 2.6, spread: 0.5 }
	}
];
