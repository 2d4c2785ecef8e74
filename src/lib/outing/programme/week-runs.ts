import { MOST_RUNS, SHORTEST_RUN_SECONDS, STEP_SECONDS, wholeSteps } from './programme-limits.ts';
import { runLengths } from './run-lengths.ts';

/** The longest run of each outing before the last of a week, as a share of the week's longest. */
const EARLIER_SHARES = [0.7, 0.85, 0.75];
/** Where little running is left for an outing, its longest run takes no more of it than this. */
const MOST_OF_AN_OUTING = [0.55, 0.65, 0.6];
/** A run shorter than this is not made shorter still for an earlier outing. */
const SHORT_ENOUGH_SECONDS = 25;
/** Where the last outing has hardly more to run than its longest run, it is that one run. */
const ONE_RUN_UP_TO = 1.25;

/**
 * The lengths of the runs of each outing of a week: the last outing has the week's longest run and at
 * least its share of the running, the others have shorter runs and share the rest. All shares are our
 * own choice, no source.
 *
 * @param week.runningSeconds whole steps; the runs add up to it, or to hardly less
 * @param week.endsInOneRun true where the last outing is the goal, run without a stop
 */
export function weekRuns(week: {
	readonly runningSeconds: number;
	readonly longestRunSeconds: number;
	readonly outings: number;
	readonly endsInOneRun: boolean;
}): readonly (readonly number[])[] {
	const { runningSeconds, longestRunSeconds, outings, endsInOneRun } = week;
	const share = wholeSteps(runningSeconds / outings);
	const isOneRun = endsInOneRun || share < longestRunSeconds * ONE_RUN_UP_TO;
	const last = isOneRun ? longestRunSeconds : share;
	const others = splitEvenly(runningSeconds - last, outings - 1);
	return [
		...others.map((total, nth) => runLengths(total, longestOf(total, nth, longestRunSeconds))),
		runLengths(last, longestRunSeconds)
	];
}

function longestOf(total: number, nth: number, longestOfWeek: number): number {
	const gentler = Math.max(longestOfWeek * EARLIER_SHARES[nth]!, SHORT_ENOUGH_SECONDS);
	const wished = Math.min(gentler, longestOfWeek, total * MOST_OF_AN_OUTING[nth]!);
	// One run fewer than there may be leaves room for uneven lengths.
	const least = Math.max(SHORTEST_RUN_SECONDS, total / (MOST_RUNS - 1));
	return Math.ceil(Math.max(wholeSteps(wished), least) / STEP_SECONDS) * STEP_SECONDS;
}

/** Whole steps that add up to the total; what does not divide goes to the first. */
function splitEvenly(total: number, count: number): readonly number[] {
	const steps = total / STEP_SECONDS;
	const each = Math.floor(steps / count);
	return Array.from(
		{ length: count },
		(_, nth) => (each + (nth < steps - each * count ? 1 : 0)) * STEP_SECONDS
	);
}
