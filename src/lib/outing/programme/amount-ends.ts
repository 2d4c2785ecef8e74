import {
	FIRST_WEEK_KMH,
	FIRST_WEEK_METRES,
	RECOVERY_SECONDS,
	SHORTEST_RUN_SECONDS,
	STEP_SECONDS,
	wholeSteps
} from './programme-limits.ts';
import { goalSeconds, type ProgrammeWishes } from './wishes.ts';

/* How much running the first and the last week hold. All of it is our own choice, no source. */

/** The mean run of an outing, as a share of its longest. */
const MEAN_SHARE = 0.8;
const USUAL_FIRST_RUNS = 7;
/** An outing has at most so many times its week's longest run: about ten runs. */
const MOST_LONGEST_RUNS = 8;
/** What each other outing of the last week holds, as a share of the goal. */
const OTHERS_SHARE = { usual: 0.45, least: 0.25 };
/** A last outing of runs and walks in turn has about so many seconds of both. */
const LAST_MAIN_SECONDS = 1800;
const LAST_RUNS = { fewest: 3, most: 8 };

export interface LastWeek {
	readonly usual: number;
	readonly least: number;
}

export function lastWeekSeconds({ goal, outingsAWeek }: ProgrammeWishes): LastWeek {
	const longest = goalSeconds(goal);
	if (goal.kind !== 'walk-and-run') {
		const week = (othersShare: number) => longest * (1 + othersShare * (outingsAWeek - 1));
		return { usual: week(OTHERS_SHARE.usual), least: week(OTHERS_SHARE.least) };
	}
	const runs = Math.round(LAST_MAIN_SECONDS / (longest + RECOVERY_SECONDS.low));
	const week = (count: number) => outingsAWeek * MEAN_SHARE * longest * count;
	return {
		usual: week(Math.min(Math.max(runs, LAST_RUNS.fewest), LAST_RUNS.most)),
		least: week(LAST_RUNS.fewest)
	};
}

/**
 * About seven runs an outing, or as many as the last week needs to be reached, up to ten; always
 * under 3 km in the week. Null where that leaves no room for the first longest run.
 *
 * @param needed by the last week, at the fastest growth
 */
export function firstWeekSeconds(wishes: ProgrammeWishes, needed: number): number | null {
	const { outingsAWeek, firstRunSeconds } = wishes;
	const longest = wholeSteps(firstRunSeconds);
	const usual = outingsAWeek * MEAN_SHARE * longest * USUAL_FIRST_RUNS;
	const most = Math.min(mostWeekSeconds(outingsAWeek, longest), underFirstWeekMetres());
	const least = longest + (outingsAWeek - 1) * SHORTEST_RUN_SECONDS;
	if (least > most) return null;
	// A step above what is needed, for what rounding takes away on the way.
	const wished = Math.max(usual, needed * 1.05, least);
	return wholeSteps(Math.min(wished, most));
}

/** The most running of a week in which the longest run is of this length. */
export function mostWeekSeconds(outingsAWeek: number, longestRunSeconds: number): number {
	return outingsAWeek * MOST_LONGEST_RUNS * longestRunSeconds;
}

function underFirstWeekMetres(): number {
	const seconds = (FIRST_WEEK_METRES / (FIRST_WEEK_KMH * 1000)) * 3600;
	return wholeSteps(seconds) - STEP_SECONDS;
}
