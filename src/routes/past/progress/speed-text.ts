import {
	metresPerMinuteFromKmPerHour,
	milesPerHourFromMetresPerMinute
} from '$lib/physiology/units.ts';
import { decimal } from '$words/numbers.ts';
import { progress } from '$words/progress.ts';

export type SpeedUnit = 'mph' | 'km/h';

const inUnit = (kmh: number, unit: SpeedUnit) =>
	unit === 'km/h' ? kmh : milesPerHourFromMetresPerMinute(metresPerMinuteFromKmPerHour(kmh));

/** A speed, rounded once, here. */
export const speedText = (kmh: number, unit: SpeedUnit) => decimal(inUnit(kmh, unit), 1);

/** A change of speed with its sign. */
export function changeText(kmh: number, unit: SpeedUnit): string {
	const amount = decimal(Math.abs(inUnit(kmh, unit)), 1);
	return progress.signed(amount, kmh < 0 && amount !== decimal(0, 1));
}
