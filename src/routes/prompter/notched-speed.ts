import { outingLimits } from '$lib/outing/outing-limits.ts';
import type { SpeedUnit } from '$lib/outing/typed-speed.ts';
import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromMilesPerHour,
	milesPerHourFromMetresPerMinute,
	metresPerMinuteFromKmPerHour,
	roundHalfUp
} from '$lib/physiology/units.ts';

/** A treadmill's step: 0.2 km/h, or 0.1 mph. Common practice, no source. */
const NOTCH: Readonly<Record<SpeedUnit, number>> = { 'km/h': 0.2, mph: 0.1 };
/** Where the first tap begins when no speed is known: the slowest running, which is a fast walk too. */
const FIRST_KMH = 5;

/** One notch more or less, on the marks of the belt. */
export function notchedKmh(speedKmh: number | null, notches: number, unit: SpeedUnit): number {
	if (speedKmh === null) return FIRST_KMH;
	const shown =
		unit === 'km/h'
			? speedKmh
			: milesPerHourFromMetresPerMinute(metresPerMinuteFromKmPerHour(speedKmh));
	const next = roundHalfUp(shown + notches * NOTCH[unit], 1);
	const { low, high } = outingLimits.speedKmh;
	const inKmh =
		unit === 'km/h' ? next : kmPerHourFromMetresPerMinute(metresPerMinuteFromMilesPerHour(next));
	return Math.min(high, Math.max(low, inKmh));
}
