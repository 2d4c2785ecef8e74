import { describe, expect, test } from 'vitest';
import { settlingIn } from '$lib/outing/settling-in.ts';
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
