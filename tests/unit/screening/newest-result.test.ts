import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickNewest } from '$lib/screening/newest-result.ts';
import type { ScreeningResult } from '$lib/screening/types.ts';
import { resultOf } from './people.ts';

const noon = Date.parse('2026-11-24T12:00:00Z');
const open = resultOf({}, { id: 'open', completedAt: noon });
const walk = resultOf({ 'age.years': 50, 'act.hard': 'no' }, { id: 'walk', completedAt: noon });
const closed = resultOf({ 'faint.year': 'yes' }, { id: 'closed', completedAt: noon });

test('of none there is none', () => {
	expect(pickNewest([])).toBeNull();
});

test('the newest completion wins, however strict the older one was', () => {
	const later = { ...open, completedAt: noon + 1 };
	expect(pickNewest([closed, later])).toBe(later);
	expect(pickNewest([later, closed])).toBe(later);
});

test('of two at the same moment the strictest wins', () => {
	expect(pickNewest([open, closed, walk])).toBe(closed);
	expect(pickNewest([walk, open])).toBe(walk);
});

test('at the same moment one that was ended wins over any other', () => {
	const ended = { ...open, id: 'ended', invalidatedAt: noon };
	expect(pickNewest([closed, ended])).toBe(ended);
});

test('at the same moment and status the one with more reasons wins', () => {
	const two = resultOf({ 'faint.year': 'yes', 'signs.other': ['ankles'] }, { id: 'a' });
	expect(pickNewest([closed, two])).toBe(two);
});

test('a moment that cannot be read counts as the newest, so that it closes', () => {
	const unreadable = { ...open, completedAt: Number.NaN };
	expect(pickNewest([unreadable, { ...closed, completedAt: noon + 9 }])).toBe(unreadable);
});

test('the order of the list never matters', () => {
	const some = fc
		.array(
			fc.record({
				from: fc.constantFrom(open, walk, closed),
				completedAt: fc.integer({ min: noon, max: noon + 2 }),
				invalidatedAt: fc.constantFrom(null, noon)
			}),
			{ minLength: 1, maxLength: 6 }
		)
		.map((list) =>
			list.map(({ from, ...rest }, place): ScreeningResult => ({
				...from,
				...rest,
				id: String(place)
			}))
		);
	fc.assert(
		fc.property(some, fc.infiniteStream(fc.nat()), (results, numbers) => {
			const shuffled = results
				.map((result) => ({ result, at: numbers.next().value as number }))
				.sort((a, b) => a.at - b.at)
				.map(({ result }) => result);
			expect(pickNewest(shuffled)).toEqual(pickNewest(results));
		}),
		{ numRuns: 1000 }
	);
});
