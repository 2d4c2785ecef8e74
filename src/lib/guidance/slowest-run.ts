import type { PhaseTarget } from '../outing/phase.ts';
import type { SpeedCapacity } from '../physiology/capacity.ts';
import { speedLimit } from '../physiology/limits.ts';
import { longestRunInCycle } from '../physiology/longest-run.ts';
import { oxygenUptake, type Gait } from '../physiology/metabolic-cost.ts';
import { metresPerMinuteFromKmPerHour } from '../physiology/units.ts';
import { reserveFractionOfUptake } from '../physiology/uptake-reserve.ts';
import type { PulseBasis } from './pulse-basis.ts';

/** What somebody can do for whom even the slowest run is more than the band. */
export type SlowestRun =
	| { readonly kind: 'longest'; readonly seconds: number; readonly speedMetresPerMinute: number }
	/** No estimate: begin with runs of 20 to 30 seconds. */
	| { readonly kind: 'short-runs' };

/** The walk between two runs of this estimate. Our own choice, no source. */
const WALK_SECONDS = 110;
const WALK_KM_PER_HOUR = 4.5;
/** A run shorter than this is not worth a number. */
const SHORTEST_RUN_SECONDS = 20;

/**
 * The longest run at the slowest running speed whose pulse stays inside the band, with walks
 * between. The pulse rises and falls in proportion to the reserve, so it is worked out in fractions
 * of it and needs no beats. Where the run would need more than the whole capacity, or where pulse is
 * off and its course is not to be trusted, there is no estimate.
 */
export function slowestRun(
	target: PhaseTarget,
	capacity: SpeedCapacity,
	basis: PulseBasis
): SlowestRun {
	const speedMetresPerMinute = metresPerMinuteFromKmPerHour(speedLimit('run').valid.low);
	const runFraction = fractionAt('run', speedMetresPerMinute, capacity);
	if (basis.kind === 'off' || runFraction > 1) return { kind: 'short-runs' };
	const walkSpeed = metresPerMinuteFromKmPerHour(WALK_KM_PER_HOUR);
	const longest = longestRunInCycle({
		walkSeconds: WALK_SECONDS,
		walkSteadyBpm: fractionAt('walk', walkSpeed, capacity),
		runSteadyBpm: runFraction,
		upperEdgeBpm: target.reserve.high
	});
	if (longest.kind !== 'seconds' || longest.seconds < SHORTEST_RUN_SECONDS) {
		return { kind: 'short-runs' };
	}
	return { kind: 'longest', seconds: longest.seconds, speedMetresPerMinute };
}

function fractionAt(gait: Gait, speedMetresPerMinute: number, capacity: SpeedCapacity): number {
	const uptake = oxygenUptake({ gait, speedMetresPerMinute, grade: 0 });
	return reserveFractionOfUptake(uptake, capacity.mlPerKgPerMinute);
}
