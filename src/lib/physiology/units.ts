/** Statute mile of the international yard and pound agreement of 1959, exact (source nistSp811). */
export const METRES_PER_MILE = 1609.344;

/** Avoirdupois pound, exact (source nistSp811). */
export const KILOGRAMS_PER_POUND = 0.45359237;

/** Inch, exact (source nistSp811). */
export const CENTIMETRES_PER_INCH = 2.54;

const METRES_PER_KILOMETRE = 1000;
const MINUTES_PER_HOUR = 60;

/** @example metresPerMinuteFromKmPerHour(6) // 100 */
export function metresPerMinuteFromKmPerHour(speedKmPerHour: number): number {
	return (speedKmPerHour * METRES_PER_KILOMETRE) / MINUTES_PER_HOUR;
}

/** @example kmPerHourFromMetresPerMinute(100) // 6 */
export function kmPerHourFromMetresPerMinute(speedMetresPerMinute: number): number {
	return (speedMetresPerMinute * MINUTES_PER_HOUR) / METRES_PER_KILOMETRE;
}

/** @example metresPerMinuteFromMilesPerHour(5) // 134.112 */
export function metresPerMinuteFromMilesPerHour(speedMilesPerHour: number): number {
	return (speedMilesPerHour * METRES_PER_MILE) / MINUTES_PER_HOUR;
}

/** @example milesPerHourFromMetresPerMinute(134.112) // 5 */
export function milesPerHourFromMetresPerMinute(speedMetresPerMinute: number): number {
	return (speedMetresPerMinute * MINUTES_PER_HOUR) / METRES_PER_MILE;
}

/**
 * Pace in minutes for one kilometre.
 * @throws RangeError unless the speed is above zero: someone who stands has no pace
 * @example minutesPerKm(125) // 8
 */
export function minutesPerKm(speedMetresPerMinute: number): number {
	if (!(speedMetresPerMinute > 0)) throw new RangeError('minutesPerKm requires a speed above 0');
	return METRES_PER_KILOMETRE / speedMetresPerMinute;
}

/**
 * Pace in minutes for one mile.
 * @throws RangeError unless the speed is above zero: someone who stands has no pace
 * @example minutesPerMile(134.112) // 12
 */
export function minutesPerMile(speedMetresPerMinute: number): number {
	if (!(speedMetresPerMinute > 0)) throw new RangeError('minutesPerMile requires a speed above 0');
	return METRES_PER_MILE / speedMetresPerMinute;
}

/** @example kilogramsFromPounds(150) // 68.0388555 */
export function kilogramsFromPounds(weightPounds: number): number {
	return weightPounds * KILOGRAMS_PER_POUND;
}

/** @example centimetresFromInches(70) // 177.8 */
export function centimetresFromInches(lengthInches: number): number {
	return lengthInches * CENTIMETRES_PER_INCH;
}

/**
 * The one rounding rule of the whole product: a half goes up, towards the larger number. Used once,
 * at display. Twelve significant digits are meant; what lies beyond them is binary noise, so that
 * 0.59 x 110 + 70 is 134.9 and a computed 146.49999999999997 is the 146.5 that it stands for.
 *
 * @param decimals digits kept after the point, a whole number from 0 to 9
 * @throws RangeError when the value is not finite or the decimals are not such a number
 * @example roundHalfUp(176.5) // 177
 * @example roundHalfUp(0.59 * 110 + 70, 1) // 134.9
 */
export function roundHalfUp(value: number, decimals = 0): number {
	if (!Number.isFinite(value)) throw new RangeError('roundHalfUp requires a finite value');
	if (!Number.isInteger(decimals) || decimals < 0 || decimals > 9) {
		throw new RangeError('roundHalfUp requires 0 to 9 whole decimals');
	}
	const factor = 10 ** decimals;
	const rounded = Math.round(withoutBinaryNoise(value * factor));
	return rounded === 0 ? 0 : rounded / factor;
}

/**
 * The nearest multiple of a treadmill's step, a half step going up.
 * @throws RangeError when the value is not finite or the step is not above zero
 * @example roundToStep(5.25, 0.1) // 5.3
 */
export function roundToStep(value: number, step: number): number {
	if (!(step > 0) || !Number.isFinite(step)) {
		throw new RangeError('roundToStep requires a step above 0');
	}
	return withoutBinaryNoise(roundHalfUp(value / step) * step);
}

function withoutBinaryNoise(value: number): number {
	return Number(value.toPrecision(12));
}
