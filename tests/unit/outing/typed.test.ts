import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthSteps, nearestStep } from '$lib/outing/length-steps.ts';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import { typedLength } from '$lib/outing/typed-length.ts';
import { kmhFromTyped, speedToType } from '$lib/outing/typed-speed.ts';
import { minutesAndSeconds } from '$words/dates.ts';

// Our own rules, no source, but for the mile of 1.609344 km (international yard and pound, 1959).

describe('a length that is typed', () => {
	test.each([
		['0:50', 50],
		[' 6:00 ', 360],
		['75:00', 4500],
		['1:15:00', 4500],
		['10:00:00', 36_000],
		['0:00', 0],
		['90 s', 90],
		['90s', 90],
		['6 Min', 360]
	])('%s is %d s', (text, seconds) => expect(typedLength(text)).toBe(seconds));

	test.each(['', '6', '1:5', '1:60', '1:60:00', ':30', '-1:00', '1.5 min', '٥:٠٠', 'soon', '1h'])(
		'"%s" could mean two things, or none',
		(text) => expect(typedLength(text)).toBeNull()
	);

	test('is read back as it is shown', () => {
		const { low, high } = outingLimits.phaseSeconds;
		fc.assert(
			fc.property(fc.integer({ min: low, max: high }), (seconds) => {
				expect(typedLength(minutesAndSeconds(seconds))).toBe(seconds);
			})
		);
	});
});

describe('the stops of a slider', () => {
	test('rise from the shortest phase to the longest', () => {
		expect(lengthSteps[0]).toBe(outingLimits.phaseSeconds.low);
		expect(lengthSteps.at(-1)).toBe(outingLimits.phaseSeconds.high);
		expect([...lengthSteps].sort((one, other) => one - other)).toEqual(lengthSteps);
		expect(new Set(lengthSteps).size).toBe(lengthSteps.length);
	});

	test('each is nearest to itself', () => {
		lengthSteps.forEach((seconds, index) => expect(nearestStep(seconds)).toBe(index));
		expect(lengthSteps[nearestStep(1e6)]).toBe(7200);
	});
});

describe('a speed that is typed', () => {
	test.each([
		['6.4', 'km/h', 6.4],
		['6,4', 'km/h', 6.4],
		['5', 'mph', 8.04672]
	] as const)('%s %s is %d km/h', (text, unit, kmh) => {
		expect(kmhFromTyped(text, unit)).toBeCloseTo(kmh, 9);
	});

	test.each(['fast', '-4', '6.', '1e3', '12.345'])('"%s" is none', (text) => {
		expect(kmhFromTyped(text, 'km/h')).toBeNaN();
	});

	test('keeps its decimal in either unit', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 10, max: 200 }),
				fc.constantFrom('km/h', 'mph'),
				(tenths, unit) => {
					const text = (tenths / 10).toFixed(1);
					expect(speedToType(kmhFromTyped(text, unit as 'mph') ?? NaN, unit as 'mph')).toBe(text);
				}
			)
		);
	});
});
