import { LONGEST_RUN_GROWTH, wholeSteps } from './programme/programme-limits.ts';

/** The longest of the first runs after settling in. Our own caution, no source. */
export const FIRST_RUN_SECONDS = 30;
/** So many days after settling in runs are kept short: eight weeks from the first walk at the soonest. */
export const SHORT_RUN_DAYS = 42;

/**
 * The longest run of somebody who settled in, in seconds: 30 s at first and half as much again each
 * week, in whole steps of 5 s; null from six weeks on, when there is no such limit any more. So
 * whoever joins a group late begins with the runs of a beginner, whatever the group does by then.
 * Our own caution, no source.
 *
 * @param daysSinceSettledIn whole days since both the sixth walk and the fourteenth day
 * @throws RangeError for what is no number of days
 * @example longestFirstRun(0) // 30
 * @example longestFirstRun(13) // 45
 * @example longestFirstRun(42) // null
 */
export function longestFirstRun(daysSinceSettledIn: number): number | null {
	if (!(daysSinceSettledIn >= 0)) {
		throw new RangeError('longestFirstRun requires days since settling in was over');
	}
	if (daysSinceSettledIn >= SHORT_RUN_DAYS) return null;
	return wholeSteps(FIRST_RUN_SECONDS * LONGEST_RUN_GROWTH ** Math.floor(daysSinceSettledIn / 7));
}
