import { describe, expect, test } from 'vitest';
import { metresPerMinuteFromMilesPerHour } from '../../src/lib/physiology/units.ts';
import { paceOf } from '../../src/routes/bands/pace-of.ts';

/*
 * Worked by hand from the definition of the international mile, 1609.344 m (agreement of 1959; NIST
 * SP 811, appendix B).
 */
describe('a pace is the time that one kilometre or one mile takes', () => {
	test.each([
		// 5 km/h: 60 min / 5 = 12 min; times 1.609344 = 19.312 min = 19 min 18.7 s.
		[5, '12:00', '19:19'],
		// 6.5 km/h: 9.230769 min = 9 min 13.8 s; 14.855483 min = 14 min 51.3 s.
		[6.5, '9:14', '14:51'],
		// 8 km/h: 7.5 min; 12.07008 min = 12 min 4.2 s.
		[8, '7:30', '12:04'],
		// 9.656064 km/h is 6 mph: 60 / 9.656064 = 6.213712 min = 6 min 12.8 s; 10 min.
		[9.656064, '6:13', '10:00']
	])('%f km/h', (kmPerHour, perKm, perMile) => {
		const metresPerMinute = (kmPerHour * 1000) / 60;
		expect(paceOf(metresPerMinute, 'min/km')).toBe(perKm);
		expect(paceOf(metresPerMinute, 'min/mile')).toBe(perMile);
	});

	test('whole miles an hour give whole minutes a mile where they divide sixty', () => {
		for (const milesPerHour of [3, 4, 5, 6, 10]) {
			const pace = paceOf(metresPerMinuteFromMilesPerHour(milesPerHour), 'min/mile');
			expect(pace).toBe(`${60 / milesPerHour}:00`);
		}
	});

	test('a second is rounded once, half up, and sixty of them are a minute', () => {
		// 1000 m in 8 min 59.5 s.
		expect(paceOf(1000 / (539.5 / 60), 'min/km')).toBe('9:00');
		expect(paceOf(1000 / (539.4 / 60), 'min/km')).toBe('8:59');
	});

	test('whoever stands has no pace', () => {
		expect(() => paceOf(0, 'min/mile')).toThrow(RangeError);
	});
});
