import type { PhaseBand } from '$lib/guidance/phase-band.ts';
import type { PulseShares } from '$lib/guidance/pulse-shares.ts';
import { speedText } from './speed-text.ts';
import { speedView, type Units } from './speed-view.ts';
import { bandView } from './view.ts';

/** One phase as it is printed on a card, every number rounded. */
export function cardPhase(phase: PhaseBand, shares: PulseShares | null, units: Units) {
	const { kind, byItsEnd, effort, pulse, speed } = phase;
	const shown = pulse && bandView(pulse);
	return {
		kind,
		byItsEnd,
		beats: shown && { low: shown.lowBpm, high: shown.highBpm },
		count: shown && { low: shown.lowCount, high: shown.highCount },
		shares,
		effort,
		speed: speedText(speedView(speed, units))
	};
}
