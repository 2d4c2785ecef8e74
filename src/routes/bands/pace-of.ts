import { minutesPerKm, minutesPerMile, roundHalfUp } from '$lib/physiology/units.ts';
import { minutesAndSeconds } from '$words/dates.ts';

export type PaceUnit = 'min/km' | 'min/mile';

/** A speed as the time that one kilometre or one mile takes, to the second, such as 12:00. */
export const paceOf = (speedMetresPerMinute: number, unit: PaceUnit): string =>
	minutesAndSeconds(
		roundHalfUp(60 * (unit === 'min/km' ? minutesPerKm : minutesPerMile)(speedMetresPerMinute))
	);
