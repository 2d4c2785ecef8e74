import { countDelayError, SITTING_AFTER_EFFORT } from '../physiology/count-delay.ts';
import { isPlausiblePulse } from '../physiology/pulse-limit.ts';
import {
	pulseFromCount,
	largestPulseCountSpread,
	pulseCountStep
} from '../physiology/pulse-count.ts';

export const COUNT_SECONDS = 10;

/** The pulse falls while one looks for it: this is as soon as a count can begin (our own choice). */
const DELAY_SECONDS = 5;

export type CountedPulse =
	| {
			readonly kind: 'counted';
			readonly bpm: number;
			/** The most that one standard deviation can be. */
			readonly spreadBpm: number;
			/** A count that began at a random moment is never off by more than this. */
			readonly mostBpm: number;
	  }
	| { readonly kind: 'not-whole' }
	| { readonly kind: 'not-believed' };

/**
 * Pulse from the beats felt in ten seconds: six times their number. For: a runner in the middle of
 * an outing, where the pulse falls too fast for a longer count (source deVan2005).
 *
 * The clock starts at a random moment and every beat felt is counted, so that n or n + 1 comes out,
 * rightly on average: one standard deviation is 3 bpm at most, and never more than 6. Own derivation,
 * as in pulseCountSpread. It assumes that no beat is missed.
 *
 * @param beats a whole number
 * @example tenSecondCount(22) // { kind: 'counted', bpm: 132, spreadBpm: 3, mostBpm: 6 }
 * @example tenSecondCount(50) // { kind: 'not-believed' }
 */
export function tenSecondCount(beats: number): CountedPulse {
	if (!Number.isInteger(beats) || beats < 0) return { kind: 'not-whole' };
	const bpm = pulseFromCount(beats, COUNT_SECONDS);
	if (!isPlausiblePulse(bpm)) return { kind: 'not-believed' };
	return {
		kind: 'counted',
		bpm,
		spreadBpm: largestPulseCountSpread(COUNT_SECONDS),
		mostBpm: pulseCountStep(COUNT_SECONDS)
	};
}

/**
 * How far a ten-second count lies under the pulse at the stop, when it begins five seconds after it
 * and the runner sits: for saying so, never for correcting. Source barak2011, as in countDelayError.
 * @example lowAfterStopping() // 7.832
 */
export function lowAfterStopping(): number {
	return -countDelayError(SITTING_AFTER_EFFORT, DELAY_SECONDS, COUNT_SECONDS);
}
