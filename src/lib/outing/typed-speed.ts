import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromKmPerHour,
	metresPerMinuteFromMilesPerHour,
	milesPerHourFromMetresPerMinute,
	roundHalfUp
} from '../physiology/units.ts';

export type SpeedUnit = 'km/h' | 'mph';

/**
 * A speed as people type it in their unit, in km/h and not rounded; null where nothing is typed, NaN
 * where it is no speed.
 *
 * @example kmhFromTyped('6,4', 'km/h') // 6.4
 * @example kmhFromTyped('4', 'mph') // 6.437376
 * @example kmhFromTyped('', 'mph') // null
 */
export function kmhFromTyped(text: string, unit: SpeedUnit): number | null {
	const typed = text.trim();
	if (typed === '') return null;
	if (!/^\d{1,3}([.,]\d{1,2})?$/.test(typed)) return NaN;
	const speed = Number(typed.replace(',', '.'));
	if (unit === 'km/h') return speed;
	return kmPerHourFromMetresPerMinute(metresPerMinuteFromMilesPerHour(speed));
}

/**
 * A speed in a unit, to one decimal.
 *
 * @example speedInUnit(6.437376, 'mph') // 4
 */
export function speedInUnit(speedKmh: number, unit: SpeedUnit): number {
	const metresPerMinute = metresPerMinuteFromKmPerHour(speedKmh);
	const speed =
		unit === 'km/h'
			? kmPerHourFromMetresPerMinute(metresPerMinute)
			: milesPerHourFromMetresPerMinute(metresPerMinute);
	return roundHalfUp(speed, 1);
}

/**
 * The same as the field holds it, whatever the language: with a point.
 *
 * @example speedToType(6.437376, 'mph') // '4.0'
 */
export function speedToType(speedKmh: number, unit: SpeedUnit): string {
	return speedInUnit(speedKmh, unit).toFixed(1);
}
