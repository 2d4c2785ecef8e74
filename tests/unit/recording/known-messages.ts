import type { SourceId } from '$lib/physiology/sources.ts';
import type { SensorContact } from '$lib/recording/heart-rate-measurement.ts';

interface Meant {
	readonly bpm: number;
	readonly contact: SensorContact;
	readonly energyKilojoules: number | null;
	/** To the thousandth of a millisecond. */
	readonly intervalsMs: readonly number[];
	readonly isWhole: boolean;
}

/**
 * A message as a sensor may send it, and what it means: printed in its source, or put together byte by
 * byte from the fields of the standard. None was recorded from a strap.
 */
export interface KnownMessage {
	/** Bytes as hexadecimal digits. */
	readonly hex: string;
	readonly meant: Meant;
	readonly source: SourceId;
	/** Printed in the source with its meaning, or worked out from the fields of the standard. */
	readonly tag: 'seen' | 'computed';
}

function message(
	hex: string,
	meant: Partial<Meant> & Pick<Meant, 'bpm'>,
	tag: KnownMessage['tag'] = 'seen'
): KnownMessage {
	return {
		hex,
		meant: {
			contact: 'not-told',
			energyKilojoules: null,
			intervalsMs: [],
			isWhole: true,
			...meant
		},
		source: tag === 'seen' ? 'gattParsers' : 'heartRateMeasurement2011',
		tag
	};
}

/** Intervals are 1/1024 s each, printed in the libraries' tests as such or as seconds. */
export const messages: readonly KnownMessage[] = [
	message('00 48', { bpm: 72 }),
	message('01 9A 00', { bpm: 154 }),
	message('01 2C 01', { bpm: 300 }),
	message('06 48', { bpm: 72, contact: 'held' }),
	message('04 50', { bpm: 80, contact: 'lost' }),
	message('04 AA', { bpm: 170, contact: 'lost' }),
	message('06 AA', { bpm: 170, contact: 'held' }),
	message('10 3C 00 04', { bpm: 60, intervalsMs: [1000] }),
	message('10 3C 00 04 33 03', { bpm: 60, intervalsMs: [1000, 799.805] }),
	message('16 48 54 01 EC 02', { bpm: 72, contact: 'held', intervalsMs: [332.031, 730.469] }),
	message('16 38 37 04 07 03', { bpm: 56, contact: 'held', intervalsMs: [1053.711, 756.836] }),
	message('18 41 FF 00 00 04', { bpm: 65, energyKilojoules: 255, intervalsMs: [1000] }),
	message('19 50 00 11 00 00 04', { bpm: 80, energyKilojoules: 17, intervalsMs: [1000] }),
	message('08 AA BB 01', { bpm: 170, energyKilojoules: 443 }),
	message('09 AA 01 BB 01', { bpm: 426, energyKilojoules: 443 }),
	message('18 AA BB 01 CC 01', { bpm: 170, energyKilojoules: 443, intervalsMs: [449.219] }),
	message('1F 2C 01 64 00 00 02', {
		bpm: 300,
		contact: 'held',
		energyKilojoules: 100,
		intervalsMs: [500]
	}),
	message('0E 50 FF FF', { bpm: 80, contact: 'held', energyKilojoules: 65535 }, 'computed'),
	// A flag without what it announces, and half a value, leave the pulse as it is.
	message('10 55', { bpm: 85 }, 'computed'),
	message('10 5A 9A', { bpm: 90, isWhole: false }, 'computed')
];
