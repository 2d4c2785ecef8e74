import { longestFirstRun } from './first-runs.ts';

/** At least this many walks, over at least this many days, before the first run. Our own rule. */
export const SETTLING_IN_WALKS = 6;
export const SETTLING_IN_DAYS = 14;

export type SettlingIn =
	| { readonly kind: 'not-needed' }
	| {
			readonly kind: 'done';
			/** So long runs may last in the weeks that follow; null once they are over. */
			readonly longestRunSeconds: number | null;
	  }
	| {
			readonly kind: 'going-on';
			readonly walksDone: number;
			readonly walksNeeded: number;
			/** Whole days that must still pass since the first walk, or since the start if none. */
			readonly daysLeft: number;
	  };

/**
 * Whether someone who starts at moderate effort has walked for long enough to begin with runs, and
 * how long these may be: the weeks of short runs count from the day on which it was enough.
 *
 * @param startsAtModerate true for whoever is new to regular exercise or has a condition
 * @param daysSinceEachWalk whole days from each walking outing to today, any order, none negative
 * @throws RangeError when a walk lies in the future
 *
 * @example settlingIn(false, []).kind // 'not-needed'
 * @example settlingIn(true, [15, 12, 9, 6, 3, 1]) // { kind: 'done', longestRunSeconds: 30 }
 */
export function settlingIn(
	startsAtModerate: boolean,
	daysSinceEachWalk: readonly number[]
): SettlingIn {
	if (daysSinceEachWalk.some((days) => !(days >= 0))) {
		throw new RangeError('settlingIn requires walks of today or before');
	}
	if (!startsAtModerate) return { kind: 'not-needed' };
	const longest = Math.max(0, ...daysSinceEachWalk);
	const walksDone = daysSinceEachWalk.length;
	if (walksDone >= SETTLING_IN_WALKS && longest >= SETTLING_IN_DAYS) {
		const inOrder = [...daysSinceEachWalk].sort((one, other) => other - one);
		const sinceSixth = inOrder[SETTLING_IN_WALKS - 1] ?? 0;
		const since = Math.min(longest - SETTLING_IN_DAYS, sinceSixth);
		return { kind: 'done', longestRunSeconds: longestFirstRun(since) };
	}
	return {
		kind: 'going-on',
		walksDone,
		walksNeeded: Math.max(0, SETTLING_IN_WALKS - walksDone),
		daysLeft: Math.max(0, SETTLING_IN_DAYS - longest)
	};
}

/**
 * The longest run that is open now in seconds; null where this sets no limit.
 *
 * @example longestRunNow({ kind: 'not-needed' }) // null
 */
export function longestRunNow(settling: SettlingIn): number | null {
	return settling.kind === 'done' ? settling.longestRunSeconds : null;
}
