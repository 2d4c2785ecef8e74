import type { PhaseKind } from '../../outing/phase.ts';
import { longestRun, type LongestRun } from '../../physiology/longest-run.ts';
import { shortestRecovery, type ShortestRecovery } from '../../physiology/shortest-recovery.ts';

/** Whether the length of a phase fits a runner, given where the phase before it left the pulse. */
export type PhaseFit =
	| { readonly kind: 'run'; readonly longest: LongestRun; readonly isTooLong: boolean }
	| { readonly kind: 'recovery'; readonly shortest: ShortestRecovery; readonly isTooShort: boolean }
	/** Too fast: the pulse would settle above the upper edge, however long the walk. */
	| { readonly kind: 'walk'; readonly isTooFast: boolean };

/** Less than this is rounding, not time. */
const HARDLY_ANY = 1e-9;

/** All but seconds are shares of the reserve. */
export function phaseFit(phase: {
	readonly kind: PhaseKind;
	readonly seconds: number;
	readonly startShare: number;
	readonly steadyShare: number;
	readonly upperEdge: number;
}): PhaseFit {
	const { kind, seconds, startShare, steadyShare, upperEdge } = phase;
	switch (kind) {
		case 'steady-run': {
			const longest = longestRun({
				startBpm: startShare,
				steadyRunBpm: steadyShare,
				upperEdgeBpm: upperEdge
			});
			return { kind: 'run', longest, isTooLong: seconds > longestSeconds(longest) + HARDLY_ANY };
		}
		case 'recovery-walk': {
			const shortest = shortestRecovery({
				startBpm: startShare,
				steadyWalkBpm: steadyShare,
				upperEdgeBpm: upperEdge
			});
			const isTooShort = seconds < shortestSeconds(shortest) - HARDLY_ANY;
			return { kind: 'recovery', shortest, isTooShort };
		}
		case 'warm-up-walk':
		case 'brisk-walk':
		case 'cool-down-walk':
			return { kind: 'walk', isTooFast: steadyShare > upperEdge + HARDLY_ANY };
	}
}

/** Infinity where there is no limit. */
export function longestSeconds(longest: LongestRun): number {
	switch (longest.kind) {
		case 'seconds':
			return longest.seconds;
		case 'no-limit':
			return Infinity;
		case 'none':
			return 0;
	}
}

/** Infinity where no walk is long enough. */
export function shortestSeconds(shortest: ShortestRecovery): number {
	return shortest.kind === 'never' ? Infinity : shortest.seconds;
}
