/** What a sensor says of its touch on the skin. Many never say. */
export type SensorContact = 'not-told' | 'lost' | 'held';

/** One message of a heart-rate sensor. */
export interface HeartRateMeasurement {
	readonly kind: 'measured';
	/** Beats a minute as the sensor says them; null where it sent 0, which is no reading. */
	readonly bpm: number | null;
	readonly contact: SensorContact;
	/** Since the sensor was reset; it stays at 65535 once that is reached. */
	readonly energyKilojoules: number | null;
	/** From beat to beat, oldest first. */
	readonly beatIntervalsMs: readonly number[];
	/** False where the message announces more than it holds, or holds more than it announces. */
	readonly isWhole: boolean;
}

export type HeartRateAnswer = HeartRateMeasurement | { readonly kind: 'too-short' };

const WIDE = 0x01;
const TOUCHES = 0x02;
const TELLS_TOUCH = 0x04;
const HAS_ENERGY = 0x08;
const HAS_INTERVALS = 0x10;
/** To be ignored: a later version of the standard may set them, and add what we cannot read. */
const RESERVED = 0xe0;

const INTERVALS_PER_SECOND = 1024;

/**
 * Reads a Heart Rate Measurement (0x2A37) of the open Bluetooth Heart Rate Service (0x180D). For: a
 * chest strap. Bytes that are cut short or malformed are an answer, never an error: what came first
 * in them and is whole still counts.
 *
 * A byte of flags; the pulse in one byte or two; energy in two where announced; then as many beat
 * intervals of two bytes, in 1/1024 s, as there are. Low byte first. The bit for contact means
 * nothing unless the bit beside it says that the sensor can tell. Source heartRateMeasurement2011.
 *
 * @param bytes of one notification; more than a byte holds is cut off
 * @example heartRateMeasurement([0x06, 72]) // { kind: 'measured', bpm: 72, contact: 'held', energyKilojoules: null, beatIntervalsMs: [], isWhole: true }
 * @example heartRateMeasurement([0x10, 60, 0x00, 0x04]).beatIntervalsMs // [1000]
 * @example heartRateMeasurement([0x01, 64]) // { kind: 'too-short' }
 */
export function heartRateMeasurement(bytes: ArrayLike<number>): HeartRateAnswer {
	const { length } = bytes;
	const byte = (at: number) => (bytes[at] ?? 0) & 0xff;
	const pair = (at: number) => byte(at) + 256 * byte(at + 1);
	const flags = byte(0);
	let at = flags & WIDE ? 3 : 2;
	if (length < at) return { kind: 'too-short' };
	const sent = flags & WIDE ? pair(1) : byte(1);

	const hasEnergy = (flags & HAS_ENERGY) !== 0 && length >= at + 2;
	const energyKilojoules = hasEnergy ? pair(at) : null;
	if (hasEnergy) at += 2;
	const isCutShort = (flags & HAS_ENERGY) !== 0 && !hasEnergy;

	const beatIntervalsMs: number[] = [];
	if (flags & HAS_INTERVALS && !isCutShort) {
		for (; at + 2 <= length; at += 2) {
			beatIntervalsMs.push((pair(at) * 1000) / INTERVALS_PER_SECOND);
		}
	}
	return {
		kind: 'measured',
		bpm: sent === 0 ? null : sent,
		contact: contactOf(flags),
		energyKilojoules,
		beatIntervalsMs,
		isWhole: !isCutShort && (at === length || (flags & RESERVED) !== 0)
	};
}

function contactOf(flags: number): SensorContact {
	if (!(flags & TELLS_TOUCH)) return 'not-told';
	return flags & TOUCHES ? 'held' : 'lost';
}
