import { targetAtFraction } from '../physiology/reserve.ts';
import type { PhaseBand } from './phase-band.ts';
import type { PulseBasis } from './pulse-basis.ts';

/** One edge of a band with what it is made of, nothing rounded. */
export interface WorkedEdge {
	readonly fraction: number;
	/** That share of the reserve, beats a minute. */
	readonly ofReserveBpm: number;
	readonly bpm: number;
	/** How much each doubt weighs here: (1 - f) of the resting pulse's, f of the maximum's. */
	readonly restingDoubtBpm: number;
	readonly maximumDoubtBpm: number;
	readonly spreadBpm: number;
}

/** How a band comes about, step by step, for a reader who wants to work it out again. */
export interface WorkedBand {
	readonly reserveBpm: number;
	/** Null where the band is "anything under". */
	readonly low: WorkedEdge | null;
	readonly high: WorkedEdge;
	/** Null unless a care team's limit takes the place of the upper edge. */
	readonly limitBpm: number | null;
}

/**
 * The steps of a phase's pulse band. Only from an open guidance whose pulse is on: there is no other
 * way to come by these two arguments. Null with pulse off.
 */
export function workedBand(phase: PhaseBand, basis: PulseBasis): WorkedBand | null {
	if (basis.kind !== 'on' || phase.pulse === null || phase.reserve === null) return null;
	const { resting, maximum, careTeamLimitBpm } = basis;
	const reserveBpm = maximum.bpm - resting.bpm;
	const edge = (fraction: number): WorkedEdge => ({
		fraction,
		ofReserveBpm: fraction * reserveBpm,
		...targetAtFraction(fraction, resting, maximum),
		restingDoubtBpm: (1 - fraction) * resting.spreadBpm,
		maximumDoubtBpm: fraction * maximum.spreadBpm
	});
	return {
		reserveBpm,
		low: phase.reserve.low === null ? null : edge(phase.reserve.low),
		high: edge(phase.reserve.high),
		limitBpm: phase.pulse.cutByCareTeam ? careTeamLimitBpm : null
	};
}
