import type { PulseEstimate } from '../../physiology/reserve.ts';
import type { PulseBasis } from '../pulse-basis.ts';
import type { ShareEstimate } from './expected-outing.ts';

/**
 * A share of the reserve as the beats of the runner whose share it is, not rounded. Shares and beats
 * rise together, so that a spread in one is a spread in the other.
 */
export function inBeats(
	{ share, spreadShare }: ShareEstimate,
	{ resting, maximum }: Extract<PulseBasis, { kind: 'on' }>
): PulseEstimate {
	const reserveBpm = maximum.bpm - resting.bpm;
	return { bpm: resting.bpm + share * reserveBpm, spreadBpm: spreadShare * reserveBpm };
}
