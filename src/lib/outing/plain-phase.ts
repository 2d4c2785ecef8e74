import type { OutingPhase } from './outing.ts';

/**
 * A phase with nothing but its kind and length; all else is each runner's own.
 *
 * @example plainPhase('brisk-walk', 60).speedKmh // null
 */
export function plainPhase(kind: OutingPhase['kind'], seconds: number): OutingPhase {
	return { kind, seconds, target: null, speedKmh: null, inclinePercent: null, cue: '' };
}
