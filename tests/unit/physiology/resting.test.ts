import fc from 'fast-check';
import { mean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { restingFromMornings } from '../../../src/lib/physiology/resting.ts';

const usual = fc.integer({ min: 40, max: 100 });
const unusual = fc.oneof(fc.integer({ min: 30, max: 39 }), fc.integer({ min: 101, max: 110 }));
const mornings = (least: number, most: number) =>
	fc.array(usual, { minLength: least, maxLength: most });

describe('resting pulse', () => {
	it('is not known without a morning', () => {
		expect(restingFromMornings([])).toEqual({ kind: 'not-known' });
	});

	it('is the mean of the mornings, surer by the root of their number', () => {
		fc.assert(
			fc.property(mornings(1, 7), (pulses) => {
				const answer = restingFromMornings(Object.freeze(pulses));
				if (answer.kind !== 'known') throw new Error(answer.kind);
				expect(answer.resting.bpm).toBeCloseTo(mean(pulses), 9);
				expect(answer.resting.spreadBpm).toBeCloseTo(3 / Math.sqrt(pulses.length), 12);
				expect(answer.resting.mornings).toBe(pulses.length);
			})
		);
	});

	it('does not depend on the order of ordinary mornings', () => {
		fc.assert(
			fc.property(mornings(1, 7), (pulses) => {
				expect(restingFromMornings([...pulses].reverse())).toEqual(
					expect.objectContaining({ kind: 'known' })
				);
			})
		);
	});

	it('rests on the last seven mornings only', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 30, max: 110 })), mornings(7, 7), (before, last) => {
				expect(restingFromMornings([...before, ...last])).toEqual(restingFromMornings(last));
			})
		);
	});

	it('is measured again when the newest morning lies outside 40 to 100', () => {
		fc.assert(
			fc.property(mornings(0, 6), unusual, (before, odd) => {
				expect(restingFromMornings([...before, odd])).toEqual({ kind: 'measure-again' });
			})
		);
	});

	it('leaves out one odd morning once it was measured again', () => {
		fc.assert(
			fc.property(mornings(0, 3), unusual, mornings(1, 3), (before, odd, after) => {
				expect(restingFromMornings([...before, odd, ...after])).toEqual(
					restingFromMornings([...before, ...after])
				);
			})
		);
	});

	it('asks a doctor first when two mornings lie outside, wherever they stand', () => {
		fc.assert(
			fc.property(
				mornings(0, 2),
				unusual,
				mornings(0, 2),
				unusual,
				mornings(0, 1),
				(a, one, b, two, c) => {
					expect(restingFromMornings([...a, one, ...b, two, ...c])).toEqual({ kind: 'ask-first' });
				}
			)
		);
	});

	it('takes the edges themselves as ordinary', () => {
		expect(restingFromMornings([40, 100]).kind).toBe('known');
		expect(restingFromMornings([39]).kind).toBe('measure-again');
		expect(restingFromMornings([101]).kind).toBe('measure-again');
	});

	it('is not worked out from a slip of the finger', () => {
		for (const slip of [29, 111, 620, NaN]) {
			expect(() => restingFromMornings([60, slip])).toThrow('restingFromMornings requires');
		}
	});
});
