import { MOST_RUNS, SHORTEST_RUN_SECONDS, STEP_SECONDS } from './programme-limits.ts';

/** The runs on both sides of the longest are at least so much shorter, as a share, at the far end. */
const LEAST_FALL = 0.25;

/**
 * Runs of uneven length that rise to the longest and fall again, the longest a little after the
 * middle, and add up to a total. All are whole steps of 5 s. Where so many seconds cannot be had in
 * twelve runs, they add up to less, never to more.
 *
 * @param totalSeconds whole steps, at least the longest run
 * @param longestSeconds whole steps, at least 15 s
 * @throws RangeError otherwise
 * @example runLengths(230, 50) // [25, 35, 45, 50, 45, 30]
 * @example runLengths(1800, 1800) // [1800]
 */
export function runLengths(totalSeconds: number, longestSeconds: number): readonly number[] {
	const total = totalSeconds / STEP_SECONDS;
	const longest = longestSeconds / STEP_SECONDS;
	const shortest = SHORTEST_RUN_SECONDS / STEP_SECONDS;
	if (!(Number.isInteger(total) && Number.isInteger(longest) && shortest <= longest)) {
		throw new RangeError('runLengths requires whole steps of 5 s, and a run of 15 s or more');
	}
	if (total < longest) throw new RangeError('runLengths requires a total of at least one run');
	// What is left beside the longest is no run of its own: then there is one run.
	if (total < longest + shortest) return [longestSeconds];
	const runs = runsFor(total, longest, shortest);
	const peak = peakOf(runs);
	const fall = Math.max(0, (runs - total / longest) / fallsOf(runs));
	const lengths = Array.from({ length: runs }, (_, run) =>
		Math.max(shortest, Math.floor(longest * (1 - fall * distance(run, peak, runs)) + 1e-9))
	);
	lengths[peak] = longest;
	evenOut(lengths, peak, total, { shortest, longest });
	return lengths.map((steps) => steps * STEP_SECONDS);
}

/** The fewest runs that are uneven enough, as far as none is too short. */
function runsFor(total: number, longest: number, shortest: number): number {
	const most = Math.min(MOST_RUNS, Math.floor((total - longest) / shortest) + 1);
	for (let runs = 2; runs < most; runs += 1) {
		if ((runs - total / longest) / fallsOf(runs) >= LEAST_FALL) return runs;
	}
	return most;
}

function peakOf(runs: number): number {
	return Math.floor(runs * 0.6);
}

/** 0 at the longest run, 1 at the farther end. */
function distance(run: number, peak: number, runs: number): number {
	return Math.abs(run - peak) / Math.max(peak, runs - 1 - peak);
}

function fallsOf(runs: number): number {
	const peak = peakOf(runs);
	let sum = 0;
	for (let run = 0; run < runs; run += 1) sum += distance(run, peak, runs);
	return sum;
}

/**
 * Adds or takes single steps until the sum is right, nearest to the longest run first when adding,
 * farthest first when taking, so that the rise and the fall stay.
 */
function evenOut(
	lengths: number[],
	peak: number,
	total: number,
	{ shortest, longest }: { readonly shortest: number; readonly longest: number }
): void {
	const nearestFirst = lengths
		.map((_, run) => run)
		.filter((run) => run !== peak)
		.sort((one, other) => Math.abs(one - peak) - Math.abs(other - peak));
	let left = total - lengths.reduce((sum, steps) => sum + steps, 0);
	const order = left > 0 ? nearestFirst : nearestFirst.toReversed();
	const step = Math.sign(left);
	for (let wasChanged = true; left !== 0 && wasChanged;) {
		wasChanged = false;
		for (const run of order) {
			const next = lengths[run]! + step;
			if (left === 0 || next < shortest || next > longest) continue;
			lengths[run] = next;
			left -= step;
			wasChanged = true;
		}
	}
}
