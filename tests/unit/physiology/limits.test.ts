import { describe, expect, it } from 'vitest';
import {
	limits,
	speedLimit,
	withinPlausible,
	withinValid,
	type Limit,
	type LimitName
} from '../../../src/lib/physiology/limits.ts';

const rows = Object.entries(limits) as [LimitName, Limit][];

describe('limits', () => {
	it.each(rows)(
		'of %s run from low to high, the studied inside the plausible, with a reason',
		(_name, limit) => {
			const { plausible, valid, unit } = limit;
			expect(unit).not.toBe('');
			expect(plausible.low).toBeLessThan(plausible.high);
			expect(plausible.why).not.toBe('');
			if (valid === null) return;
			expect(valid.why).not.toBe('');
			expect(valid.low).toBeLessThan(valid.high);
			expect(valid.low).toBeGreaterThanOrEqual(plausible.low);
			expect(valid.high).toBeLessThanOrEqual(plausible.high);
		}
	);

	it.each(rows)('of %s include their edges and nothing beyond', (name, { plausible }) => {
		expect(withinPlausible(name, plausible.low)).toBe(true);
		expect(withinPlausible(name, plausible.high)).toBe(true);
		expect(withinPlausible(name, plausible.low - 0.001)).toBe(false);
		expect(withinPlausible(name, plausible.high + 0.001)).toBe(false);
		expect(withinPlausible(name, NaN)).toBe(false);
	});

	it('take adults only', () => {
		expect(withinValid('ageYears', 17.9)).toBe(false);
		expect(withinValid('ageYears', 18)).toBe(true);
		expect(withinValid('ageYears', 95)).toBe(true);
	});

	it('take a resting pulse of 40 to 100 as it is, and doubt 30 to 110', () => {
		expect([39, 40, 100, 101].map((bpm) => withinValid('restingBpm', bpm))).toEqual([
			false,
			true,
			true,
			false
		]);
		expect([29, 30, 110, 111].map((bpm) => withinPlausible('restingBpm', bpm))).toEqual([
			false,
			true,
			true,
			false
		]);
	});

	it('fall back on the plausible range where nothing narrower is known', () => {
		expect(withinValid('inclinePercent', 15)).toBe(true);
		expect(withinValid('inclinePercent', 15.1)).toBe(false);
	});

	it('give walking 3 to 7 km/h and running from 5 km/h', () => {
		expect(speedLimit('walk').valid).toMatchObject({ low: 3, high: 7 });
		expect(speedLimit('run').valid.low).toBe(5);
	});
});
