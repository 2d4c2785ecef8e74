import type { Limit } from './limits.ts';

/** By itself, because a phone in mid-outing asks for nothing else of the table of limits. */
export const pulseLimit = {
	unit: 'bpm',
	plausible: { low: 25, high: 230, why: 'outside this a sensor has lost the heart' },
	valid: null
} as const satisfies Limit;

/**
 * Whether a measured pulse could be true at all, edges included.
 * @example isPlausiblePulse(140) // true
 * @example isPlausiblePulse(24) // false
 */
export function isPlausiblePulse(bpm: number): boolean {
	return bpm >= pulseLimit.plausible.low && bpm <= pulseLimit.plausible.high;
}
