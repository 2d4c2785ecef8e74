import type { Kinetics } from './pulse-kinetics.ts';
import { pulseAfter, secondsUntil, usualKinetics } from './pulse-kinetics.ts';

/** How long a run may last before the pulse leaves a band at its upper edge. */
export type LongestRun =
	| { readonly kind: 'seconds'; readonly seconds: number }
	/** The pulse settles at the edge or below it. */
	| { readonly kind: 'no-limit' }
	/** The pulse is above the edge at the start, or at it with a run that would lift it. */
	| { readonly kind: 'none' };

/**
 * Longest run whose peak stays at or below an edge, from a pulse at its start. For: the first weeks'
 * runs, and what to do where no steady run is gentle enough. The rising curve solved for the time.
 * An illustration; sources, people and error as in pulseAfter.
 *
 * @throws RangeError unless all three are finite
 * @example longestRun({ startBpm: 100, steadyRunBpm: 160, upperEdgeBpm: 138.8280 }).seconds // 60
 * @example longestRun({ startBpm: 100, steadyRunBpm: 130, upperEdgeBpm: 139 }).kind // 'no-limit'
 * @example longestRun({ startBpm: 140, steadyRunBpm: 160, upperEdgeBpm: 139 }).kind // 'none'
 */
export function longestRun(
	run: { readonly startBpm: number; readonly steadyRunBpm: number; readonly upperEdgeBpm: number },
	kinetics: Kinetics = usualKinetics
): LongestRun {
	const { startBpm, steadyRunBpm, upperEdgeBpm } = run;
	if (!Number.isFinite(startBpm + steadyRunBpm + upperEdgeBpm)) {
		throw new RangeError('longestRun requires finite pulses');
	}
	if (startBpm > upperEdgeBpm) return { kind: 'none' };
	if (steadyRunBpm <= upperEdgeBpm) return { kind: 'no-limit' };
	if (startBpm === upperEdgeBpm) return { kind: 'none' };
	return {
		kind: 'seconds',
		seconds: secondsUntil(startBpm, steadyRunBpm, upperEdgeBpm, kinetics)
	};
}

/**
 * Longest run of a cycle that is repeated until it settles, given the walk between two runs: the
 * steady cycle's peak, put at the edge and solved for the run's length. Then every run ends at the
 * edge, so every run starts where the walk brings the pulse from there.
 * An illustration; sources, people and error as in pulseAfter.
 *
 * @throws RangeError for a walk below zero seconds, or a pulse that is not finite
 * @example longestRunInCycle({ walkSeconds: 90, walkSteadyBpm: 100, runSteadyBpm: 160, upperEdgeBpm: 144.66464 }).seconds // 60
 */
export function longestRunInCycle(
	cycle: {
		readonly walkSeconds: number;
		readonly walkSteadyBpm: number;
		readonly runSteadyBpm: number;
		readonly upperEdgeBpm: number;
	},
	kinetics: Kinetics = usualKinetics
): LongestRun {
	const { walkSeconds, walkSteadyBpm, runSteadyBpm, upperEdgeBpm } = cycle;
	const startBpm = pulseAfter(upperEdgeBpm, walkSteadyBpm, walkSeconds, kinetics);
	return longestRun({ startBpm, steadyRunBpm: runSteadyBpm, upperEdgeBpm }, kinetics);
}
