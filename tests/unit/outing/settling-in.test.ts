import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestRunNow, settlingIn } from '$lib/outing/settling-in.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { intensityOf } from '$lib/physiology/intensity.ts';

describe('settling in: six walks over two weeks (our own rule)', () => {
	test('before the first walk both are still to come', () => {
		expect(settlingIn(true, [])).toEqual({
			kind: 'going-on',
			walksDone: 0,
			walksNeeded: 6,
			daysLeft: 14
		});
	});

	test('many walks in a few days are not enough', () => {
		expect(settlingIn(true, [6, 5, 4, 3, 2, 1, 0])).toMatchObject({
			kind: 'going-on',
			walksNeeded: 0,
			daysLeft: 8
		});
	});

	test('two weeks with five walks are not enough', () => {
		expect(settlingIn(true, [20, 15, 10, 5, 1])).toMatchObject({ walksNeeded: 1, daysLeft: 0 });
	});

	test('the weeks of short runs count from the day on which it was enough', () => {
		const longest = (days: readonly number[]) => settlingIn(true, days);
		expect(longest([14, 12, 9, 6, 3, 1])).toEqual({ kind: 'done', longestRunSeconds: 30 });
		expect(longest([28, 26, 23, 20, 17, 14])).toEqual({ kind: 'done', longestRunSeconds: 65 });
		// The first walk long ago, the sixth today: whoever was away begins as everybody does.
		expect(longest([200, 9, 6, 4, 2, 0])).toEqual({ kind: 'done', longestRunSeconds: 30 });
		expect(longest([126, 124, 121, 118, 115, 112])).toEqual({
			kind: 'done',
			longestRunSeconds: null
		});
	});

	test('one walk more never makes runs shorter, nor does a day more', () => {
		const days = fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 6, maxLength: 20 });
		const openTo = (walks: readonly number[]) => {
			const now = settlingIn(true, walks);
			return now.kind === 'going-on' ? 0 : (longestRunNow(now) ?? Infinity);
		};
		fc.assert(
			fc.property(days, fc.integer({ min: 0, max: 90 }), (walks, another) => {
				expect(openTo([...walks, another])).toBeGreaterThanOrEqual(openTo(walks));
				expect(openTo(walks.map((since) => since + 1))).toBeGreaterThanOrEqual(openTo(walks));
			})
		);
	});

	test('a walk in the future is a mistake of the caller', () => {
		expect(() => settlingIn(true, [-1])).toThrow(RangeError);
		expect(() => settlingIn(true, [Number.NaN])).toThrow(RangeError);
	});
});

describe('phase targets', () => {
	test('brisk walk is moderate on both edges (Garber 2011)', () => {
		const { low, high } = phaseTargets['brisk-walk'].reserve;
		expect(intensityOf('reservePercent', (low ?? 0) * 100)).toBe('moderate');
		expect(intensityOf('reservePercent', high * 100)).toBe('moderate');
	});

	test('steady run begins moderate and ends just inside vigorous', () => {
		const { low, high } = phaseTargets['steady-run'].reserve;
		expect(intensityOf('reservePercent', (low ?? 0) * 100)).toBe('moderate');
		expect(intensityOf('reservePercent', high * 100)).toBe('vigorous');
	});

	test('every target lies in order, inside reserve and scale', () => {
		for (const { reserve, effort, usualSeconds } of Object.values(phaseTargets)) {
			expect(reserve.low ?? 0).toBeLessThan(reserve.high);
			expect(reserve.high).toBeLessThan(1);
			expect(effort.low).toBeLessThanOrEqual(effort.high);
			expect(effort.high).toBeLessThanOrEqual(6);
			expect(usualSeconds.low).toBeLessThanOrEqual(usualSeconds.high);
		}
	});
});
