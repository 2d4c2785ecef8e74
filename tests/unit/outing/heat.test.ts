import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatAction, heatActions, type Heat } from '$lib/outing/heat.ts';

const unknown: Heat = { wetBulbCelsius: null, heatIndexCelsius: null, isWarned: false };
const celsius = fc.option(fc.double({ min: -30, max: 55, noNaN: true }));
const heat = fc.record({
	wetBulbCelsius: celsius,
	heatIndexCelsius: celsius,
	isWarned: fc.boolean()
});
const rank = (what: Heat) => {
	const action = heatAction(what);
	return action === null ? -1 : heatActions.indexOf(action);
};

describe('heat', () => {
	// ACSM 2007, column for people who are not acclimatised, as restated in PMC5094838; the lowest
	// edge from memory.
	test.each([
		[25.6, 'usual'],
		[25.7, 'ease'],
		[27.8, 'ease'],
		[27.9, 'walk-only'],
		[30, 'walk-only'],
		[30.1, 'cancel']
	] as const)('a wet-bulb globe of %d °C: %s', (wetBulbCelsius, action) => {
		expect(heatAction({ ...unknown, wetBulbCelsius })).toBe(action);
	});

	// Classes of the US weather service from 80, 90 and 103 °F, in °C to the whole degree.
	test.each([
		[80, 'ease'],
		[90, 'walk-only'],
		[103, 'cancel']
	] as const)('a heat index of %d °F: %s', (fahrenheit, action) => {
		const heatIndexCelsius = Math.round(((fahrenheit - 32) * 5) / 9);
		expect(heatAction({ ...unknown, heatIndexCelsius })).toBe(action);
		expect(heatAction({ ...unknown, heatIndexCelsius: heatIndexCelsius - 1 })).not.toBe(action);
	});

	test('nothing known is no answer', () => {
		expect(heatAction(unknown)).toBeNull();
	});

	test('the stricter wins: more that is known never loosens', () => {
		fc.assert(
			fc.property(heat, (all) => {
				const alone = [
					rank({ ...all, heatIndexCelsius: null, isWarned: false }),
					rank({ ...all, wetBulbCelsius: null, isWarned: false }),
					rank({ ...unknown, isWarned: all.isWarned })
				];
				expect(rank(all)).toBe(Math.max(...alone));
			})
		);
	});

	test('hotter is never milder', () => {
		fc.assert(
			fc.property(heat, fc.double({ min: 0, max: 20, noNaN: true }), (all, more) => {
				const warmer = (by: number | null) => (by === null ? null : by + more);
				const hotter = {
					...all,
					wetBulbCelsius: warmer(all.wetBulbCelsius),
					heatIndexCelsius: warmer(all.heatIndexCelsius)
				};
				expect(rank(hotter)).toBeGreaterThanOrEqual(rank(all));
			})
		);
	});

	test('a temperature that is none is the caller’s mistake', () => {
		expect(() => heatAction({ ...unknown, wetBulbCelsius: NaN })).toThrow(RangeError);
	});
});
