import { REST_UPTAKE, UPTAKE_ERROR_FRACTION, oxygenUptake } from './metabolic-cost.ts';
import type { DoubtfulPulse } from './pulse-doubt.ts';
import { noDoubt } from './pulse-doubt.ts';
import { targetAtFraction } from './reserve.ts';
import type { Demand, NoEstimateReason, RunnerPulse } from './steady-pulse.ts';
import { steadyPulse } from './steady-pulse.ts';

export type DoubtfulSteadyPulse =
	| ({ readonly kind: 'steady' } & DoubtfulPulse)
	| { readonly kind: 'no-estimate'; readonly reason: NoEstimateReason };

/**
 * targetAtFraction with its doubt by source: maximum weighs by the fraction, resting by the rest.
 * @throws RangeError as targetAtFraction
 * @example pulseAtReserve(0.5, { resting: { bpm: 70, spreadBpm: 3 }, maximum: { bpm: 180, spreadBpm: 11.4 }, capacity: null }).bpm // 125
 * @example pulseAtReserve(0.5, { resting: { bpm: 70, spreadBpm: 3 }, maximum: { bpm: 180, spreadBpm: 11.4 }, capacity: null }).doubt.maximum // 5.7
 */
export function pulseAtReserve(fraction: number, runner: RunnerPulse): DoubtfulPulse {
	const { resting, maximum } = runner;
	const { bpm } = targetAtFraction(fraction, resting, maximum);
	const doubt = {
		...noDoubt,
		maximum: fraction * maximum.spreadBpm,
		resting: (1 - fraction) * resting.spreadBpm
	};
	return { bpm, doubt };
}

/**
 * steadyPulse with its doubt by source. At a given speed more capacity lowers the fraction of
 * reserve, and a costlier gait raises it; a fraction that the person holds depends on neither.
 * @throws RangeError as steadyPulse
 * @example doubtfulSteadyPulse({ kind: 'speed', gait: 'run', speedMetresPerMinute: 80, grade: 0 }, { resting: { bpm: 70, spreadBpm: 3 }, maximum: { bpm: 180, spreadBpm: 11.4 }, capacity: { mlPerKgPerMinute: 35.5, spread: 2, basis: 'walk-check' } }).doubt.capacity // -3.4375
 */
export function doubtfulSteadyPulse(demand: Demand, runner: RunnerPulse): DoubtfulSteadyPulse {
	const steady = steadyPulse(demand, runner);
	if (steady.kind === 'no-estimate') return steady;
	const { reserveFraction } = steady;
	const { bpm, doubt } = pulseAtReserve(reserveFraction, runner);
	const { maximum, resting, capacity } = runner;
	if (demand.kind === 'reserve' || capacity === null) return { kind: 'steady', bpm, doubt };
	const uptakeReserve = capacity.mlPerKgPerMinute - REST_UPTAKE;
	const bpmPerUptake = (maximum.bpm - resting.bpm) / uptakeReserve;
	return {
		kind: 'steady',
		bpm,
		doubt: {
			...doubt,
			capacity: -reserveFraction * bpmPerUptake * capacity.spread,
			equation: bpmPerUptake * UPTAKE_ERROR_FRACTION * oxygenUptake(demand)
		}
	};
}
