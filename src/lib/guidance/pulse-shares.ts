import { reserveFractionOf } from '../physiology/reserve.ts';
import type { PulseBand } from './pulse-band.ts';
import type { PulseBasis } from './pulse-basis.ts';

/**
 * A pulse band as fractions of the reserve, for a picture of it. It tells neither the resting pulse
 * nor the maximum, which would give a runner's age away.
 */
export interface PulseShares {
	/** Null where the band is "anything under". */
	readonly low: number | null;
	readonly high: number;
	/** How unsure each edge is: one standard deviation, as a fraction of the reserve. */
	readonly lowSpread: number | null;
	readonly highSpread: number;
}

export function pulseShares(
	{ low, high }: PulseBand,
	{ resting, maximum }: Extract<PulseBasis, { kind: 'on' }>
): PulseShares {
	const share = (bpm: number) => reserveFractionOf(bpm, resting.bpm, maximum.bpm);
	const spread = (bpm: number) => bpm / (maximum.bpm - resting.bpm);
	return {
		low: low === null ? null : share(low.bpm),
		high: share(high.bpm),
		lowSpread: low === null ? null : spread(low.spreadBpm),
		highSpread: spread(high.spreadBpm)
	};
}
