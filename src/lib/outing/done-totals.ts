import { donePhases } from './done-phases.ts';
import { phaseTargets } from './phase.ts';
import type { DoneOuting } from './settle-entries.ts';

/** What an outing came to, in seconds, pauses left out. */
export interface DoneTotals {
	readonly totalSeconds: number;
	/** Null where the start of the outing never arrived, so that nobody knows what was a run. */
	readonly running: {
		readonly seconds: number;
		/** Runs that follow each other without a walk between count as one. */
		readonly longestSeconds: number;
	} | null;
}

/**
 * For: the list of past outings, and what comes next time. Only what was done counts, not what was
 * planned: half a run is half a run.
 *
 * @example doneTotals({ started: null, phases: [], answers: [], pulses: [] }).totalSeconds // 0
 */
export function doneTotals(
	done: Pick<DoneOuting, 'started' | 'phases' | 'answers' | 'pulses'>
): DoneTotals {
	let [totalSeconds, seconds, longestSeconds, withoutStop] = [0, 0, 0, 0];
	for (const { kind, activeSeconds } of donePhases(done)) {
		if (activeSeconds === null || activeSeconds === 0) continue;
		const isRun = kind !== null && phaseTargets[kind].gait === 'run';
		totalSeconds += activeSeconds;
		seconds += isRun ? activeSeconds : 0;
		withoutStop = isRun ? withoutStop + activeSeconds : 0;
		longestSeconds = Math.max(longestSeconds, withoutStop);
	}
	return { totalSeconds, running: done.started === null ? null : { seconds, longestSeconds } };
}
