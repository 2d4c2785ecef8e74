import { phasesOf, type Outing } from './outing.ts';
import { phaseTargets } from './phase.ts';

/** What an outing adds up to, in whole seconds, repeats written out. */
export interface OutingTotals {
	readonly totalSeconds: number;
	readonly runningSeconds: number;
	/** Runs that follow each other without a walk between count as one. */
	readonly longestRunSeconds: number;
	readonly phaseCount: number;
}

/**
 * For: the foot of the editor, the name of an outing, the amount of a week.
 *
 * @example outingTotals({ parts: [] }).totalSeconds // 0
 */
export function outingTotals(outing: Pick<Outing, 'parts'>): OutingTotals {
	const phases = phasesOf(outing);
	let [totalSeconds, runningSeconds, longestRunSeconds, withoutStop] = [0, 0, 0, 0];
	for (const { kind, seconds } of phases) {
		const isRun = phaseTargets[kind].gait === 'run';
		totalSeconds += seconds;
		runningSeconds += isRun ? seconds : 0;
		withoutStop = isRun ? withoutStop + seconds : 0;
		longestRunSeconds = Math.max(longestRunSeconds, withoutStop);
	}
	return { totalSeconds, runningSeconds, longestRunSeconds, phaseCount: phases.length };
}
