import type { PhaseTarget } from '../outing/phase.ts';
import { beatsIn } from '../physiology/pulse-count.ts';
import { targetAtFraction } from '../physiology/reserve.ts';
import type { PulseBasis } from './pulse-basis.ts';

export interface PulseEdge {
	readonly fraction: number;
	readonly bpm: number;
	/** One standard deviation. */
	readonly spreadBpm: number;
	/** Beats that are felt in 15 seconds. */
	readonly count15: number;
}

export interface PulseBand {
	/** Null where the band is "anything under". */
	readonly low: PulseEdge | null;
	readonly high: PulseEdge;
	/** True where the care team's limit, not the target, is the upper edge. */
	readonly cutByCareTeam: boolean;
}

type PulseOn = Extract<PulseBasis, { kind: 'on' }>;

/**
 * The pulse band of a phase, not rounded: rounding happens once, where it is shown. A limit from
 * the care team cuts it from above; where it lies under the band, the band is "anything under".
 */
export function pulseBand(target: PhaseTarget, basis: PulseOn): PulseBand {
	const high = edge(target.reserve.high, basis);
	const low = target.reserve.low === null ? null : edge(target.reserve.low, basis);
	const limit = basis.careTeamLimitBpm;
	if (limit === null || limit >= high.bpm) return { low, high, cutByCareTeam: false };
	const cut: PulseEdge = { ...high, bpm: limit, spreadBpm: 0, count15: beatsIn(15, limit) };
	return { low: low !== null && low.bpm < limit ? low : null, high: cut, cutByCareTeam: true };
}

function edge(fraction: number, { resting, maximum }: PulseOn): PulseEdge {
	const { bpm, spreadBpm } = targetAtFraction(fraction, resting, maximum);
	return { fraction, bpm, spreadBpm, count15: beatsIn(15, bpm) };
}

/** The same phase for somebody whose maximum lies some beats away from the estimate. */
export function pulseBandIfMaximumIs(
	offBpm: number,
	target: PhaseTarget,
	basis: PulseOn
): PulseBand {
	const maximum = { ...basis.maximum, bpm: basis.maximum.bpm + offBpm };
	return pulseBand(target, { ...basis, maximum });
}
