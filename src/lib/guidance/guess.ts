import type { Effort, TalkLevel } from '../physiology/effort-scale.ts';

/**
 * The efforts that go with each way of talking, by our own words of the scale: whole sentences up to
 * 5, one sentence and then a breath at 6, a few words at a time at 7. Neighbours share a number, for
 * a rating is good to about one either way. Our own, no source.
 */
export const effortOfTalk: Readonly<Record<TalkLevel, { low: Effort; high: Effort }>> = {
	comfortable: { low: 0, high: 6 },
	'with-breaths': { low: 6, high: 7 },
	'broke-off': { low: 7, high: 10 }
};

/**
 * How many steps of the scale a guess lies from what talk then said: below zero where it was too low.
 * @example effortOff(8, 'comfortable') // 2
 * @example effortOff(4, 'with-breaths') // -2
 */
export function effortOff(guess: Effort, talk: TalkLevel): number {
	const { low, high } = effortOfTalk[talk];
	if (guess > high) return guess - high;
	return guess < low ? guess - low : 0;
}

/** Fewer guesses than twice this say nothing about getting closer. Our own choice, no source. */
const COMPARED = 3;

/**
 * How far off the first three guesses were on average, and the last three.
 * @param off in the order in which they were made; the sign does not count
 * @returns null before there are six
 * @example gettingCloser([9, -12, 6, -3, 0, 3]) // { first: 9, last: 2 }
 * @example gettingCloser([9, -12, 6]) // null
 */
export function gettingCloser(off: readonly number[]): { first: number; last: number } | null {
	if (off.length < 2 * COMPARED) return null;
	return { first: meanSize(off.slice(0, COMPARED)), last: meanSize(off.slice(-COMPARED)) };
}

function meanSize(off: readonly number[]): number {
	return off.reduce((sum, one) => sum + Math.abs(one), 0) / off.length;
}
