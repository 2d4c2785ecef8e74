import { expect, test } from 'vitest';
import { shortDate } from '../../../src/lib/words/en/dates.ts';
import { and, or } from '../../../src/lib/words/en/lists.ts';
import { decimal, twoDigits, upToDecimals } from '../../../src/lib/words/en/numbers.ts';
import { plural } from '../../../src/lib/words/en/plural.ts';

// How British English writes numbers, plurals, lists and dates: Unicode CLDR, locale en-GB (from memory).

test.each([
	[0, 'walks'],
	[1, 'walk'],
	[2, 'walks'],
	[21, 'walks'],
	[1.5, 'walks']
])('%d goes with "%s": only one is one', (count, form) => {
	expect(plural(count, { one: 'walk', other: 'walks' })).toBe(form);
});

test('a number has a point, and as many decimals as it was asked for', () => {
	expect(decimal(10, 1)).toBe('10.0');
	expect(decimal(6.437376, 1)).toBe('6.4');
	expect(upToDecimals(0.03644, 3)).toBe('0.036');
	expect(upToDecimals(11, 3)).toBe('11');
	expect(twoDigits(0.00004823)).toBe('0.000048');
});

test('a list of none, one, two and three', () => {
	expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(and)).toEqual([
		'',
		'a',
		'a and b',
		'a, b and c'
	]);
	expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(or)).toEqual([
		'',
		'a',
		'a or b',
		'a, b or c'
	]);
});

test('a short date has its day before its month', () => {
	expect(shortDate('2027-11-04')).toBe('4 Nov');
});
