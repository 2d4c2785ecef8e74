import type { Kinetics } from './pulse-kinetics.ts';
import { pulseAfter, secondsUntil, usualKinetics } from './pulse-kinetics.ts';

/** How long a walk must last until the pulse is back in the recovery band. */
export type ShortestRecovery =
	| { readonly kind: 'seconds'; readonly seconds: number }
	/** The walk itself keeps the pulse at the band's upper edge or above: walk slower. */
	| { readonly kind: 'never' };

/**
 * Shortest walk that brings the pulse down to the upper edge of the recovery band. For: the length of
 * recoveries. The falling curve solved for the time; zero when the pulse is there already.
 * An illustration; sources, people and error as in pulseAfter, and the fall during a walk is the
 * least certain part of it.
 *
 * @throws RangeError unless all three are finite
 * @example shortestRecovery({ startBpm: 144.6646, steadyWalkBpm: 100, upperEdgeBpm: 116.5404 }).seconds // 90
 * @example shortestRecovery({ startBpm: 144, steadyWalkBpm: 120, upperEdgeBpm: 116 }).kind // 'never'
 */
export function shortestRecovery(
	walk: {
		readonly startBpm: number;
		readonly steadyWalkBpm: number;
		readonly upperEdgeBpm: number;
	},
	kinetics: Kinetics = usualKinetics
): ShortestRecovery {
	const { startBpm, steadyWalkBpm, upperEdgeBpm } = walk;
	if (!Number.isFinite(startBpm + steadyWalkBpm + upperEdgeBpm)) {
		throw new RangeError('shortestRecovery requires finite pulses');
	}
	if (startBpm <= upperEdgeBpm) return { kind: 'seconds', seconds: 0 };
	const seconds = secondsUntil(startBpm, steadyWalkBpm, upperEdgeBpm, kinetics);
	return Number.isFinite(seconds) ? { kind: 'seconds', seconds } : { kind: 'never' };
}

/**
 * Shortest walk of a cycle that is repeated until it settles, given the run: its trough, put at the
 * upper edge of the recovery band and solved for the walk's length. Then every run starts at that
 * edge, and every walk at what the run makes of it.
 * An illustration; as shortestRecovery.
 *
 * @throws RangeError for a run below zero seconds, or a pulse that is not finite
 * @example shortestRecoveryInCycle({ runSeconds: 60, runSteadyBpm: 160, walkSteadyBpm: 100, upperEdgeBpm: 116.54039 }).seconds // 90
 */
export function shortestRecoveryInCycle(
	cycle: {
		readonly runSeconds: number;
		readonly runSteadyBpm: number;
		readonly walkSteadyBpm: number;
		readonly upperEdgeBpm: number;
	},
	kinetics: Kinetics = usualKinetics
): ShortestRecovery {
	const { runSeconds, runSteadyBpm, walkSteadyBpm, upperEdgeBpm } = cycle;
	const startBpm = pulseAfter(upperEdgeBpm, runSteadyBpm, runSeconds, kinetics);
	return shortestRecovery({ startBpm, steadyWalkBpm: walkSteadyBpm, upperEdgeBpm }, kinetics);
}
