import { countingShare, countsToAimAt } from '../physiology/talk-test.ts';

export interface BreathAnswer {
	/** Fraction of the count at rest. */
	readonly share: number;
	readonly effort: 'easier' | 'there' | 'harder';
	/** Counts that go with moderate to vigorous effort, not rounded. A null low end: this or more. */
	readonly aim: { readonly low: number; readonly high: number | null };
}

/**
 * Where a count on one breath during effort stands. The studies' range reaches into vigorous effort,
 * so whoever is to stay comfortable stays at its easy end: our own caution, no source.
 *
 * @param staysComfortable may walk only, or settling in
 * @throws RangeError as countingShare
 * @example breathAnswer(9, 20, false).effort // 'there'
 * @example breathAnswer(9, 20, true).effort // 'harder'
 */
export function breathAnswer(
	counted: number,
	countedAtRest: number,
	staysComfortable: boolean
): BreathAnswer {
	const { low, high } = countsToAimAt(countedAtRest);
	const least = staysComfortable ? high : low;
	return {
		share: countingShare(counted, countedAtRest),
		effort: counted < least ? 'harder' : counted > high ? 'easier' : 'there',
		aim: staysComfortable ? { low: high, high: null } : { low, high }
	};
}
