import { limits } from '../physiology/limits.ts';
import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromKmPerHour,
	metresPerMinuteFromMilesPerHour
} from '../physiology/units.ts';

export type SpeedUnit = 'km/h' | 'mph';
/** A pulse as it was read: for a full minute, or the beats of 15 seconds. */
export type PulseRead = 'minute' | 'count-15';

/**
 * No adult's pulse is under 50 after three minutes of walking. So a count of 15 seconds that is typed
 * as a full minute is told, and so is the other way round.
 */
export const WALKING_PULSE_BPM = { low: 50, high: limits.pulseBpm.plausible.high };

/** @returns null where nobody walks so fast or so slowly */
export function walkingSpeed(speed: number, unit: SpeedUnit): number | null {
	const metres =
		unit === 'mph' ? metresPerMinuteFromMilesPerHour(speed) : metresPerMinuteFromKmPerHour(speed);
	const { plausible, valid } = limits.walkingSpeedKmPerHour;
	const kmPerHour = kmPerHourFromMetresPerMinute(metres);
	return kmPerHour < plausible.low || kmPerHour > valid.high ? null : metres;
}

/**
 * @param typed beats, for a full minute or for 15 seconds
 * @example walkingPulse(26, 'count-15') // { ok: true, bpm: 104 }
 * @example walkingPulse(26, 'minute') // { ok: false, code: 'too-low' }
 * @example walkingPulse(104, 'count-15') // { ok: false, code: 'count-too-high' }
 */
export function walkingPulse(
	typed: number,
	read: PulseRead
):
	| { readonly ok: true; readonly bpm: number }
	| {
			readonly ok: false;
			readonly code: 'too-low' | 'too-high' | 'count-too-low' | 'count-too-high';
	  } {
	const bpm = read === 'minute' ? typed : typed * 4;
	const { low, high } = WALKING_PULSE_BPM;
	if (bpm < low) return { ok: false, code: read === 'minute' ? 'too-low' : 'count-too-low' };
	if (bpm > high) return { ok: false, code: read === 'minute' ? 'too-high' : 'count-too-high' };
	return { ok: true, bpm };
}

/** What comes after a walk of the check. */
export type AfterWalk = 'go-on' | 'too-short-of-breath' | 'at-the-limit';

/**
 * Talk first: whoever could not speak in whole sentences goes no faster. The limit of a care team is
 * never walked up to.
 */
export function afterWalk(
	isComfortable: boolean,
	bpm: number,
	careTeamLimitBpm: number | null
): AfterWalk {
	if (!isComfortable) return 'too-short-of-breath';
	return careTeamLimitBpm !== null && bpm >= careTeamLimitBpm ? 'at-the-limit' : 'go-on';
}
