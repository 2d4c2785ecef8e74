import { longestRun } from '../../physiology/longest-run.ts';
import { SETTLING_IN_DAYS, SETTLING_IN_WALKS } from '../settling-in.ts';
import { phaseTargets } from '../phase.ts';
import { firstWeekSeconds, lastWeekSeconds, mostWeekSeconds } from './amount-ends.ts';
import {
	FIRST_WEEKS,
	LONGEST_RUN_GROWTH,
	SHORTEST_RUN_SECONDS,
	WEEKLY_GROWTH,
	wholeSteps
} from './programme-limits.ts';
import { weekRuns } from './week-runs.ts';
import { goalSeconds, type ProgrammeWishes } from './wishes.ts';

/** How much one week with runs holds. */
export interface WeekAmount {
	readonly runningSeconds: number;
	readonly longestRunSeconds: number;
	/** The lengths of the runs of each outing, in seconds. */
	readonly runs: readonly (readonly number[])[];
}

/** Why wishes do not fit together. */
export type RefusalReason =
	/** The first week's longest run is as long as the goal. */
	| 'goal-already-reached'
	/** Runs of that length would make 3 km or more in the first week. */
	| 'first-week-too-far'
	/** Running without a stop is not expected to stay inside the band. */
	| 'not-in-band'
	/** The longest run would have to grow by more than half from one week to the next. */
	| 'longest-run-grows-too-fast'
	/** A week's running would have to grow by more than 14 %. */
	| 'week-grows-too-fast'
	/** In the first eight weeks a run would lift the pulse above 80 % of the reserve. */
	| 'too-hard-at-first';

/** Whole weeks of walking before the first run: at least six walks over at least two weeks. */
export function settlingInWeeks(
	wishes: Pick<ProgrammeWishes, 'settlingIn' | 'outingsAWeek'>
): number {
	if (!wishes.settlingIn) return 0;
	return Math.max(SETTLING_IN_DAYS / 7, Math.ceil(SETTLING_IN_WALKS / wishes.outingsAWeek));
}

/**
 * The amounts of the weeks with runs, first to last, or why there are none. The longest run grows by
 * the same factor from week to week and reaches the goal in the last; so does the running of a week,
 * by 14 % at most.
 */
export function weekAmounts(wishes: ProgrammeWishes): readonly WeekAmount[] | RefusalReason {
	const first = wholeSteps(wishes.firstRunSeconds);
	const goal = goalSeconds(wishes.goal);
	if (goal <= first) return 'goal-already-reached';
	if (wishes.goal.kind !== 'walk-and-run' && wishes.pulse.staysInBand === 'no')
		return 'not-in-band';
	const settling = settlingInWeeks(wishes);
	const weeks = wishes.weeks - settling;
	const runGrowth = (goal / first) ** (1 / (weeks - 1));
	if (runGrowth > LONGEST_RUN_GROWTH + 1e-9) return 'longest-run-grows-too-fast';
	const longest = Array.from({ length: weeks }, (_, week) =>
		week === weeks - 1 ? goal : wholeSteps(first * runGrowth ** week)
	);
	if (isTooHardAtFirst(longest, settling, wishes)) return 'too-hard-at-first';
	return withTotals(longest, wishes);
}

function withTotals(
	longest: readonly number[],
	wishes: ProgrammeWishes
): readonly WeekAmount[] | RefusalReason {
	const { outingsAWeek: outings, goal } = wishes;
	const last = lastWeekSeconds(wishes);
	const steps = longest.length - 1;
	const firstWeek = firstWeekSeconds(wishes, last.usual / WEEKLY_GROWTH ** steps);
	if (firstWeek === null) return 'first-week-too-far';
	const growth = Math.min(WEEKLY_GROWTH, Math.max(1, (last.usual / firstWeek) ** (1 / steps)));
	const amounts: WeekAmount[] = [];
	let before = Infinity;
	for (const [week, longestRunSeconds] of longest.entries()) {
		// Rounding is not made up for later: each week counts from what the one before became.
		const wished = Math.min(firstWeek * growth ** week, before * WEEKLY_GROWTH);
		const total = wholeSteps(Math.min(wished, mostWeekSeconds(outings, longestRunSeconds)));
		if (total < longestRunSeconds + (outings - 1) * SHORTEST_RUN_SECONDS) {
			return 'week-grows-too-fast';
		}
		const endsInOneRun = week === steps && goal.kind !== 'walk-and-run';
		const runs = weekRuns({ runningSeconds: total, longestRunSeconds, outings, endsInOneRun });
		before = runs.flat().reduce((sum, seconds) => sum + seconds, 0);
		amounts.push({ runningSeconds: before, longestRunSeconds, runs });
	}
	return before >= last.least ? amounts : 'week-grows-too-fast';
}

/** Whoever settled in: no run of the first eight weeks lifts the pulse above 80 % of the reserve. */
function isTooHardAtFirst(
	longest: readonly number[],
	settling: number,
	{ settlingIn, pulse }: ProgrammeWishes
): boolean {
	if (!settlingIn) return false;
	const answer = longestRun({
		startBpm: phaseTargets['recovery-walk'].reserve.high,
		steadyRunBpm: pulse.runShare,
		upperEdgeBpm: FIRST_WEEKS.share
	});
	if (answer.kind !== 'seconds') return false;
	return longest.some(
		(seconds, week) => settling + week < FIRST_WEEKS.weeks && seconds > answer.seconds
	);
}
