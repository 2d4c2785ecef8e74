/** Short runs stay under this share of the reserve at first. Our own rule, no source. */
export const FIRST_WEEKS_SHARE = 0.8;
/** Eight weeks, from the first walk. Our own rule, no source. */
export const FIRST_WEEKS_DAYS = 56;

/**
 * The most that the pulse of a run may be expected to reach in the first weeks of whoever started at
 * moderate effort, as a share of the reserve; null when the eight weeks have passed, or for whoever
 * needed no settling in. Without a walk on record the weeks have not begun.
 *
 * @throws RangeError when a walk lies in the future
 * @example gentleStart(true, [20, 3]) // 0.8
 * @example gentleStart(true, [56, 3]) // null
 */
export function gentleStart(
	startsAtModerate: boolean,
	daysSinceEachWalk: readonly number[]
): number | null {
	if (daysSinceEachWalk.some((days) => !(days >= 0))) {
		throw new RangeError('gentleStart requires walks of today or before');
	}
	if (!startsAtModerate) return null;
	return Math.max(0, ...daysSinceEachWalk) >= FIRST_WEEKS_DAYS ? null : FIRST_WEEKS_SHARE;
}
