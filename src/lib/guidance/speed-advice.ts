import type { PhaseTarget } from '../outing/phase.ts';
import type { SpeedCapacity } from '../physiology/capacity.ts';
import { speedForReserve, type SpeedAnswer } from '../physiology/speed-for-reserve.ts';
import { metresPerMinuteFromKmPerHour } from '../physiology/units.ts';
import type { PulseBasis } from './pulse-basis.ts';
import { slowestRun, type SlowestRun } from './slowest-run.ts';

/** A natural range for a phase when the runner's capacity is not known. Common practice, no source. */
const NATURAL_KM_PER_HOUR = {
	'warm-up-walk': { low: 3, high: 5 },
	'brisk-walk': { low: 4, high: 7 },
	'steady-run': { low: 5, high: null },
	'recovery-walk': { low: 4, high: 5 },
	'cool-down-walk': { low: 3, high: 4 }
} as const;

export type SpeedAdvice =
	| {
			readonly kind: 'natural';
			readonly lowMetresPerMinute: number;
			/** Null where there is no upper end to name: begin at the slow end. */
			readonly highMetresPerMinute: number | null;
	  }
	| Extract<SpeedAnswer, { kind: 'range' | 'too-fast-to-walk' | 'no-walk-this-gentle' }>
	| { readonly kind: 'no-run-this-gentle'; readonly slowest: SlowestRun };

/**
 * Speed for a phase. Without a capacity it is the natural range and "start at the slow end": a
 * capacity guessed from questions is too unsure to set a speed. A recovery walk is 4 to 5 km/h for
 * everybody, so that the legs keep moving while the pulse comes down.
 */
export function speedAdvice(
	target: PhaseTarget,
	capacity: SpeedCapacity | null,
	basis: PulseBasis
): SpeedAdvice {
	if (capacity === null || target.kind === 'recovery-walk') return natural(target);
	const answer = speedForReserve({
		gait: target.gait,
		lowFraction: target.reserve.low ?? 0,
		highFraction: target.reserve.high,
		capacity,
		grade: 0
	});
	if (answer.kind !== 'no-run-this-gentle') return answer;
	return { kind: answer.kind, slowest: slowestRun(target, capacity, basis) };
}

function natural({ kind }: PhaseTarget): SpeedAdvice {
	const { low, high } = NATURAL_KM_PER_HOUR[kind];
	return {
		kind: 'natural',
		lowMetresPerMinute: metresPerMinuteFromKmPerHour(low),
		highMetresPerMinute: high === null ? null : metresPerMinuteFromKmPerHour(high)
	};
}
