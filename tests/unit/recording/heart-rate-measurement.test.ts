import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sources } from '$lib/physiology/sources.ts';
import { heartRateMeasurement } from '$lib/recording/heart-rate-measurement.ts';
import { messages } from './known-messages.ts';

/* Fields and flags: heartRateMeasurement2011. Each message names its own source. */

const measured = (bytes: ArrayLike<number>) => {
	const answer = heartRateMeasurement(bytes);
	if (answer.kind !== 'measured') throw new Error('too short');
	return answer;
};

const bytesOf = (hex: string) => hex.split(' ').map((digits) => parseInt(digits, 16));

describe('messages that others read, too', () => {
	it.each(
		messages.map(
			(one) => [one.hex, one.meant.bpm, sources[one.source].authors, one.tag, one] as const
		)
	)('%s is a pulse of %i (%s, %s)', (_hex, _bpm, _authors, _tag, { hex, meant }) => {
		const { beatIntervalsMs, ...rest } = measured(bytesOf(hex));
		const { intervalsMs, ...expected } = meant;
		expect(rest).toEqual({ kind: 'measured', ...expected });
		expect(beatIntervalsMs).toHaveLength(intervalsMs.length);
		beatIntervalsMs.forEach((ms, i) => expect(ms).toBeCloseTo(intervalsMs[i] ?? NaN, 3));
	});
});

describe('the bytes of a heart-rate sensor', () => {
	it.each([[[]], [[0x00]], [[0x01, 0x40]]])('%j is too short to hold a pulse', (bytes) => {
		expect(heartRateMeasurement(bytes)).toEqual({ kind: 'too-short' });
	});

	it('a pulse of 0 is no reading', () => {
		expect(measured([0x06, 0]).bpm).toBeNull();
	});

	it('the contact bit means nothing unless the sensor says that it can tell', () => {
		expect(measured([0x02, 72]).contact).toBe('not-told');
		expect(measured([0x00, 72]).contact).toBe('not-told');
	});

	it('energy that is announced and cut short leaves the pulse, and no interval is guessed', () => {
		expect(measured([0x18, 72, 0x11])).toMatchObject({
			bpm: 72,
			energyKilojoules: null,
			beatIntervalsMs: [],
			isWhole: false
		});
	});

	it('more bytes than are announced are a fault, unless a reserved flag announces them', () => {
		expect(measured([0x00, 72, 1]).isWhole).toBe(false);
		expect(measured([0x20, 72, 1])).toMatchObject({ bpm: 72, isWhole: true });
	});

	it('reads a view into the middle of a buffer from where the view begins', () => {
		const { buffer } = new Uint8Array([0xff, 0xff, 0x06, 72, 0xff]);
		expect(measured(new Uint8Array(buffer, 2, 2))).toMatchObject({ bpm: 72, contact: 'held' });
	});

	it('gives back whatever a sensor can say, at any length of message', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 0xffff }),
				fc.constantFrom('not-told', 'lost', 'held'),
				fc.option(fc.integer({ min: 0, max: 0xffff })),
				fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 30 }),
				(bpm, contact, energy, intervals) => {
					const pair = (value: number) => [value & 0xff, value >> 8];
					const flags =
						1 |
						{ 'not-told': 0, lost: 4, held: 6 }[contact] |
						(energy === null ? 0 : 8) |
						(intervals.length === 0 ? 0 : 16);
					const bytes = [flags, ...pair(bpm), ...(energy === null ? [] : pair(energy))];
					expect(heartRateMeasurement([...bytes, ...intervals.flatMap(pair)])).toEqual({
						kind: 'measured',
						bpm: bpm === 0 ? null : bpm,
						contact,
						energyKilojoules: energy,
						beatIntervalsMs: intervals.map((raw) => (raw / 1024) * 1000),
						isWhole: true
					});
				}
			)
		);
	});

	it('no bytes at all make it throw, or say a number that is none', () => {
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => {
				const answer = heartRateMeasurement(bytes);
				if (answer.kind === 'too-short') {
					expect(bytes.length).toBeLessThan(3);
					return;
				}
				const { bpm, energyKilojoules, beatIntervalsMs } = answer;
				const numbers = [bpm ?? 1, (energyKilojoules ?? 0) + 1, ...beatIntervalsMs];
				expect(numbers.every((number) => Number.isFinite(number) && number >= 0)).toBe(true);
				expect(bpm).not.toBe(0);
			}),
			{ numRuns: 1000 }
		);
	});

	it('cutting a message short never changes what came first in it', () => {
		fc.assert(
			fc.property(fc.uint8Array({ minLength: 3, maxLength: 20 }), fc.nat(20), (bytes, cut) => {
				const whole = measured(bytes);
				const short = heartRateMeasurement(bytes.subarray(0, cut));
				if (short.kind === 'too-short') return;
				expect(short.bpm).toBe(whole.bpm);
				expect(short.contact).toBe(whole.contact);
				expect(whole.beatIntervalsMs.slice(0, short.beatIntervalsMs.length)).toEqual(
					short.beatIntervalsMs
				);
			})
		);
	});
});
