/** At least this many walks, over at least this many days, before the first run. Our own rule. */
export const SETTLING_IN_WALKS = 6;
export const SETTLING_IN_DAYS = 14;

export type SettlingIn =
	| { readonly kind: 'not-needed' }
	| { readonly kind: 'done' }
	| {
			readonly kind: 'going-on';
			readonly walksDone: number;
			readonly walksNeeded: number;
			/** Whole days that must still pass since the first walk, or since the start if none. */
			readonly daysLeft: number;
	  };

/**
 * Whether someone who starts at moderate effort has walked for long enough to begin with runs.
 *
 * @param startsAtModerate true for whoever is new to regular exercise or has a condition
 * @param daysSinceEachWalk whole days from each walking outing to today, any order, none negative
 * @throws RangeError when a walk lies in the future
 *
 * @example settlingIn(false, []).kind // 'not-needed'
 * @example settlingIn(true, [15, 12, 9, 6, 3, 1]).kind // 'done'
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
	if (walksDone >= SETTLING_IN_WALKS && longest >= SETTLING_IN_DAYS) return { kind: 'done' };
	return {
		kind: 'going-on',
		walksDone,
		walksNeeded: Math.max(0, SETTLING_IN_WALKS - walksDone),
		daysLeft: Math.max(0, SETTLING_IN_DAYS - longest)
	};
}
