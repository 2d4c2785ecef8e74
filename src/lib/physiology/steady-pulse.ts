import type { WeighedCapacity } from './capacity.ts';
import type { TreadmillEffort } from './metabolic-cost.ts';
import { oxygenUptake } from './metabolic-cost.ts';
import type { PulseStep } from './pulse-response.ts';
import type { PulseEstimate } from './reserve.ts';
import { reserveFractionOfUptake } from './uptake-reserve.ts';

/** What the pulse of one person is worked out from. */
export interface RunnerPulse {
	readonly resting: PulseEstimate;
	readonly maximum: PulseEstimate;
	/** Null when nothing is known of it: then a speed says nothing about the pulse. */
	readonly capacity: WeighedCapacity | null;
}

/** What a phase asks: a fraction of reserve that the person holds, or a speed. */
export type Demand =
	| { readonly kind: 'reserve'; readonly reserveFraction: number }
	| ({ readonly kind: 'speed' } & TreadmillEffort);

export interface DemandingPhase {
	readonly durationSeconds: number;
	readonly demand: Demand;
}

export type NoEstimateReason =
	/** It asks for more than the person's whole reserve: such a run has no steady pulse. */
	| 'over-reserve'
	/** A speed, and no capacity to weigh it against. */
	| 'capacity-unknown';

export type SteadyPulse =
	| { readonly kind: 'steady'; readonly bpm: number; readonly reserveFraction: number }
	| { readonly kind: 'no-estimate'; readonly reason: NoEstimateReason };

export type PulseSteps =
	| { readonly kind: 'steps'; readonly steps: readonly PulseStep[] }
	| {
			readonly kind: 'no-estimate';
			readonly reason: NoEstimateReason;
			readonly phaseIndex: number;
	  };

/**
 * Pulse that a demand would settle at: resting, plus the fraction of reserve times maximum less
 * resting, at most the maximum. A speed gives the fraction of uptake reserve, taken as that of
 * heart-rate reserve. For: the expected curve. An illustration.
 * Sources karvonen1957, acsmMetabolic, swain1998; people, limits and errors as in targetAtFraction,
 * oxygenUptake and uptakeAtReserve. Where a run asks for more than the whole reserve no estimate is
 * given: it cannot become steady.
 *
 * @throws RangeError for a fraction outside 0 to 1, a resting pulse not below the maximum, or a speed
 * or grade that oxygenUptake refuses
 * @example steadyPulse({ kind: 'speed', gait: 'run', speedMetresPerMinute: 130, grade: 0 }, { resting: { bpm: 70, spreadBpm: 3 }, maximum: { bpm: 180, spreadBpm: 11.4 }, capacity: { mlPerKgPerMinute: 35, spread: 2, basis: 'measured' } }).bpm // 160.7937
 */
export function steadyPulse(demand: Demand, runner: RunnerPulse): SteadyPulse {
	const { resting, maximum } = runner;
	if (!(maximum.bpm > resting.bpm)) {
		throw new RangeError('steadyPulse requires a maximum above the resting pulse');
	}
	const reserveFraction = reserveFractionOfDemand(demand, runner.capacity);
	if (reserveFraction === null) return { kind: 'no-estimate', reason: 'capacity-unknown' };
	if (reserveFraction > 1) return { kind: 'no-estimate', reason: 'over-reserve' };
	const bpm = resting.bpm + reserveFraction * (maximum.bpm - resting.bpm);
	return { kind: 'steady', bpm: Math.min(bpm, maximum.bpm), reserveFraction };
}

/**
 * The phases of an outing as steps of the pulse, or the first phase that has no estimate, counted
 * from zero. An illustration; as steadyPulse.
 * @example pulseSteps([{ durationSeconds: 60, demand: { kind: 'reserve', reserveFraction: 0.5 } }], { resting: { bpm: 70, spreadBpm: 3 }, maximum: { bpm: 180, spreadBpm: 11.4 }, capacity: null }).steps // [{ durationSeconds: 60, steadyBpm: 125 }]
 */
export function pulseSteps(phases: readonly DemandingPhase[], runner: RunnerPulse): PulseSteps {
	const steps: PulseStep[] = [];
	for (const [phaseIndex, { durationSeconds, demand }] of phases.entries()) {
		const steady = steadyPulse(demand, runner);
		if (steady.kind === 'no-estimate') return { ...steady, phaseIndex };
		steps.push({ durationSeconds, steadyBpm: steady.bpm });
	}
	return { kind: 'steps', steps };
}

function reserveFractionOfDemand(demand: Demand, capacity: WeighedCapacity | null): number | null {
	if (demand.kind === 'speed') {
		if (capacity === null) return null;
		return reserveFractionOfUptake(oxygenUptake(demand), capacity.mlPerKgPerMinute);
	}
	if (!(demand.reserveFraction >= 0 && demand.reserveFraction <= 1)) {
		throw new RangeError('steadyPulse requires a fraction from 0 to 1');
	}
	return demand.reserveFraction;
}
