import { isPlausiblePulse } from '../physiology/pulse-limit.ts';
import type { SensorContact } from './heart-rate-measurement.ts';
import { median } from './median.ts';

/** What a sensor said at a moment. */
export interface PulseReading {
	/** Milliseconds, by a clock that only goes forward. */
	readonly atMs: number;
	/** Null where the sensor had no reading. */
	readonly bpm: number | null;
	readonly contact: SensorContact;
}

/** The pulse that may be shown now, or why there is none. */
export type PulseNow =
	| { readonly kind: 'known'; readonly bpm: number }
	| {
			readonly kind: 'none';
			readonly why: 'nothing-yet' | 'silent' | 'contact-lost' | 'settling' | 'unsteady';
	  };

/** Sensors speak about once a second. All of these are our own choice, no source. */
export const WINDOW_MS = 6000;
export const SILENT_AFTER_MS = 5000;
const READINGS_NEEDED = 3;
/** A pulse that rises with effort stays inside this over the window; a slipping strap does not. */
const NEAR_BPM = 20;

/**
 * The pulse of the last seconds, smoothed: the median of what the sensor said, so that one wild
 * value changes nothing. No number while contact is lost, after a silence, until three readings have
 * come since, or while most of them lie far apart. Own rule; it assumes a reading a second or two.
 * It follows a rising pulse some three seconds late.
 *
 * @param readings oldest first; only the last seconds matter
 * @param nowMs by the same clock
 * @example pulseNow([120, 121, 180, 122].map((bpm, i) => ({ atMs: i * 1000, bpm, contact: 'held' })), 3500) // { kind: 'known', bpm: 121.5 }
 * @example pulseNow([{ atMs: 0, bpm: 120, contact: 'lost' }], 500) // { kind: 'none', why: 'contact-lost' }
 */
export function pulseNow(readings: readonly PulseReading[], nowMs: number): PulseNow {
	const newest = readings.at(-1);
	if (newest === undefined) return none('nothing-yet');
	if (newest.contact === 'lost') return none('contact-lost');
	if (nowMs - newest.atMs > SILENT_AFTER_MS) return none('silent');
	const pulses = unbroken(readings)
		.filter(({ atMs }) => newest.atMs - atMs <= WINDOW_MS)
		.flatMap(({ bpm }) => (bpm !== null && isPlausiblePulse(bpm) ? [bpm] : []));
	if (pulses.length < READINGS_NEEDED) return none('settling');
	const middle = median(pulses);
	const near = pulses.filter((bpm) => Math.abs(bpm - middle) <= NEAR_BPM);
	if (near.length * 3 < pulses.length * 2) return none('unsteady');
	return { kind: 'known', bpm: middle };
}

/** What came since contact was last lost, or since the last silence. */
function unbroken(readings: readonly PulseReading[]): readonly PulseReading[] {
	let from = readings.length;
	while (from > 0) {
		const reading = readings[from - 1];
		const after = readings[from];
		if (reading === undefined || reading.contact === 'lost') break;
		if (after !== undefined && after.atMs - reading.atMs > SILENT_AFTER_MS) break;
		from -= 1;
	}
	return readings.slice(from);
}

const none = (why: Extract<PulseNow, { kind: 'none' }>['why']): PulseNow => ({ kind: 'none', why });
