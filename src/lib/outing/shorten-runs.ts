import { phasesOf, type Outing, type OutingPhase } from './outing.ts';
import { outingLimits } from './outing-limits.ts';
import { phaseTargets } from './phase.ts';
import { plainPhase } from './plain-phase.ts';
import { SHORTEST_RUN_SECONDS } from './programme/programme-limits.ts';

/** A shorter walk is no end of a run. Our own caution, no source. */
export const LEAST_WALK_BETWEEN_SECONDS = 60;

/**
 * The same outing for somebody whose runs may last so long at most. A longer run ends there, and the
 * rest of it is walked, into the walk that follows: everybody begins each run together, and the
 * runner has runs that grow rather than none until the limit is gone. Where no walk follows, or
 * too little of the run would be left, all of it is a brisk walk. There are as many phases as before,
 * and the outing is as long; the same outing comes back where every run is short enough.
 *
 * @throws RangeError for a limit under the shortest run
 * @example shortenRuns({ name: '', parts: [] }, 30).parts.length // 0
 */
export function shortenRuns(outing: Outing, longestSeconds: number): Outing {
	if (!(longestSeconds >= SHORTEST_RUN_SECONDS)) {
		throw new RangeError('shortenRuns requires a limit of 15 s or more');
	}
	const phases = phasesOf(outing);
	const shortened: OutingPhase[] = [];
	let [ranSeconds, walkedSeconds, toWalk] = [0, 0, 0];
	for (const [index, phase] of phases.entries()) {
		const left = longestSeconds - ranSeconds;
		const own = isRun(phase) ? shortenedRun(phase, left, phases[index + 1]) : phase;
		const seconds = own.seconds + toWalk;
		shortened.push({ ...own, seconds });
		toWalk = phase.seconds - own.seconds;
		walkedSeconds = isRun(own) ? 0 : walkedSeconds + seconds;
		if (isRun(own)) ranSeconds += seconds;
		if (walkedSeconds >= LEAST_WALK_BETWEEN_SECONDS) ranSeconds = 0;
	}
	const isSame = phases.every(
		({ kind, seconds }, n) => kind === shortened[n]?.kind && seconds === shortened[n].seconds
	);
	return isSame ? outing : { ...outing, parts: shortened };
}

/** @param next the phase that what is left of the run is walked into */
function shortenedRun(run: OutingPhase, left: number, next: OutingPhase | undefined): OutingPhase {
	if (run.seconds <= left) return run;
	const walkedOn = (next?.seconds ?? Infinity) + run.seconds - left;
	return left >= SHORTEST_RUN_SECONDS && walkedOn <= outingLimits.phaseSeconds.high
		? { ...run, seconds: left }
		: plainPhase('brisk-walk', run.seconds);
}

const isRun = ({ kind }: OutingPhase) => phaseTargets[kind].gait === 'run';
