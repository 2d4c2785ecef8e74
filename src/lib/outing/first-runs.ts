import { outingLimits } from './outing-limits.ts';
import { LONGEST_RUN_GROWTH, wholeSteps } from './programme/programme-limits.ts';

/** The longest of the first runs after settling in. Our own caution, no source. */
export const FIRST_RUN_SECONDS = 30;

/**
 * The longest run of somebody who settled in, in seconds: 30 s at first and half as much again each
 * week, in whole steps of 5 s; null once an outing cannot be longer, after sixteen weeks. So whoever
 * joins a group late begins with the runs of a beginner, whatever the group does by then, and no week
 * brings a jump: not the one either in which a limit would end that is still short.
 * Our own caution, no source.
 *
 * @param daysSinceSettledIn whole days since both the sixth walk and the fourteenth day
 * @throws RangeError for what is no number of days
 * @example longestFirstRun(0) // 30
 * @example longestFirstRun(13) // 45
 * @example longestFirstRun(112) // null
 */
export function longestFirstRun(daysSinceSettledIn: number): number | null {
	if (!(daysSinceSettledIn >= 0)) {
		throw new RangeError('longestFirstRun requires days since settling in was over');
	}
	const weeks = Math.floor(daysSinceSettledIn / 7);
	const seconds = FIRST_RUN_SECONDS * LONGEST_RUN_GROWTH ** weeks;
	return seconds >= outingLimits.outingSeconds.high ? null : wholeSteps(seconds);
}
