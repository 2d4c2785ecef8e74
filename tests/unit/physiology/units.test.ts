import fc from 'fast-check';
import Quantity from 'js-quantities';
import { describe, expect, it } from 'vitest';
import {
	centimetresFromInches,
	kilogramsFromPounds,
	kmPerHourFromMetresPerMinute,
	METRES_PER_MILE,
	metresPerMinuteFromKmPerHour,
	metresPerMinuteFromMilesPerHour,
	milesPerHourFromMetresPerMinute,
	minutesPerKm,
	minutesPerMile,
	roundHalfUp,
	roundToStep
} from '../../../src/lib/physiology/units.ts';

/** The units library cannot handle numbers near the smallest that a computer has. */
const amount = fc.double({ min: 1e-6, max: 500, noNaN: true });
const speed = fc.double({ min: 0.1, max: 500, noNaN: true });

describe('units', () => {
	it.each([
		['km/h to m/min', metresPerMinuteFromKmPerHour, 'km/h', 'm/min'],
		['m/min to km/h', kmPerHourFromMetresPerMinute, 'm/min', 'km/h'],
		['mph to m/min', metresPerMinuteFromMilesPerHour, 'mph', 'm/min'],
		['m/min to mph', milesPerHourFromMetresPerMinute, 'm/min', 'mph'],
		['pounds to kilograms', kilogramsFromPounds, 'lb', 'kg'],
		['inches to centimetres', centimetresFromInches, 'in', 'cm']
	] as const)('agree with a units library: %s', (_what, convert, from, to) => {
		fc.assert(
			fc.property(amount, (value) => {
				expect(convert(value)).toBeCloseTo(new Quantity(value, from).to(to).scalar, 8);
			})
		);
	});

	it('know the statute mile', () => {
		expect(METRES_PER_MILE).toBe(new Quantity('1 mi').to('m').scalar);
	});

	it('come back to where they started', () => {
		fc.assert(
			fc.property(amount, (value) => {
				expect(kmPerHourFromMetresPerMinute(metresPerMinuteFromKmPerHour(value))).toBeCloseTo(
					value,
					9
				);
				expect(milesPerHourFromMetresPerMinute(metresPerMinuteFromMilesPerHour(value))).toBeCloseTo(
					value,
					9
				);
			})
		);
	});
});

describe('pace', () => {
	it('is the time for one unit of way at a speed', () => {
		fc.assert(
			fc.property(speed, (metresPerMinute) => {
				expect(minutesPerKm(metresPerMinute) * metresPerMinute).toBeCloseTo(1000, 6);
				expect(minutesPerMile(metresPerMinute) * metresPerMinute).toBeCloseTo(METRES_PER_MILE, 6);
			})
		);
	});

	it('does not exist for someone who stands', () => {
		for (const standing of [0, -1, NaN]) {
			expect(() => minutesPerKm(standing)).toThrow('minutesPerKm requires');
			expect(() => minutesPerMile(standing)).toThrow('minutesPerMile requires');
		}
	});
});

describe('roundHalfUp', () => {
	it.each([
		[176.5, 0, 177],
		[177.5, 0, 178],
		[-0.5, 0, 0],
		[-1.5, 0, -1],
		[0.59 * 110 + 70, 1, 134.9],
		[1.005, 2, 1.01],
		[146.49999999999997, 0, 147],
		[146.4999, 0, 146],
		[0, 3, 0]
	])('%d to %d decimals is %d', (value, decimals, rounded) => {
		expect(roundHalfUp(value, decimals)).toBe(rounded);
	});

	it('never moves a number by more than half of its last digit', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1e4, max: 1e4, noNaN: true }),
				fc.integer({ min: 0, max: 4 }),
				(value, decimals) => {
					expect(Math.abs(roundHalfUp(value, decimals) - value)).toBeLessThanOrEqual(
						0.5 * 10 ** -decimals + 1e-7
					);
				}
			)
		);
	});

	it('changes nothing the second time', () => {
		fc.assert(
			fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (value) => {
				const once = roundHalfUp(value, 2);
				expect(roundHalfUp(once, 2)).toBe(once);
			})
		);
	});

	it('refuses what cannot be rounded', () => {
		expect(() => roundHalfUp(NaN)).toThrow('roundHalfUp requires');
		expect(() => roundHalfUp(Infinity)).toThrow('roundHalfUp requires');
		expect(() => roundHalfUp(1, 1.5)).toThrow('roundHalfUp requires');
		expect(() => roundHalfUp(1, -1)).toThrow('roundHalfUp requires');
	});
});

describe('roundToStep', () => {
	it.each([
		[5.25, 0.1, 5.3],
		[5.24, 0.1, 5.2],
		[6.1, 0.2, 6.2],
		[7.3, 0.5, 7.5],
		[0, 0.1, 0],
		[0.1 + 0.2, 0.1, 0.3]
	])('%d in steps of %d is %d', (value, step, rounded) => {
		expect(roundToStep(value, step)).toBe(rounded);
	});

	it('refuses a step of nothing', () => {
		for (const step of [0, -0.1, NaN, Infinity]) {
			expect(() => roundToStep(5, step)).toThrow('roundToStep requires');
		}
	});
});
