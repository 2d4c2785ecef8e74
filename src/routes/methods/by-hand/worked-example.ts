import { phaseTargets } from '$lib/outing/phase.ts';
import { tanakaMaximum } from '$lib/physiology/maximum.ts';
import { targetAtFraction } from '$lib/physiology/reserve.ts';

/** An invented person, so that no reader's own numbers come from a page without a gate. */
const ageYears = 46;
const restingBpm = 66;

const maximumBpm = tanakaMaximum(ageYears);
const { low, high } = phaseTargets['brisk-walk'].reserve;
const at = (fraction: number) =>
	targetAtFraction(fraction, { bpm: restingBpm, spreadBpm: 0 }, { bpm: maximumBpm, spreadBpm: 0 })
		.bpm;

/** Worked out by the code that works out everybody's bands; nothing rounded. */
export const worked = {
	ageYears,
	restingBpm,
	lowFraction: low ?? 0,
	highFraction: high,
	answers: {
		maximum: maximumBpm,
		reserve: maximumBpm - restingBpm,
		low: at(low ?? 0),
		high: at(high)
	}
} as const;
