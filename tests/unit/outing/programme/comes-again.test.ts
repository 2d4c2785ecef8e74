import { expect, test } from 'vitest';
import { comesAgain } from '$lib/outing/programme/comes-again.ts';
import { daysToCome } from '$lib/outing/programme/days-to-come.ts';
import { plainWishes, weeksOf } from './any-wishes.ts';

// Our own rules, no source.

const weeks = weeksOf(plainWishes);
const days = { startsOn: '2026-11-30', weekdays: [1, 3, 6], holidays: [] };
const weekOf = (number: number | null) =>
	weeks.find(({ outings }) => outings.some((one) => one.number === number))?.number ?? null;

/** The first outings in order, and what became of each, with what comes of it. */
function calendarAfter(states: readonly ('done' | 'missed')[], today: string) {
	const planned = daysToCome(weeks, days, [], days.startsOn);
	const past = states.map((state, nth) => ({
		onDate: planned[nth]!.onDate,
		number: planned[nth]!.number,
		state
	}));
	const toCome = daysToCome(weeks, days, past, today).map(({ onDate, number }) => ({
		onDate,
		number,
		state: 'planned' as const
	}));
	return [...past, ...toCome].map((day) => ({ ...day, week: weekOf(day.number) }));
}

test('a programme that goes on has no week again', () => {
	expect(comesAgain(calendarAfter([], '2026-11-25'), '2026-11-25')).toBe(null);
	expect(comesAgain(calendarAfter(['done', 'missed', 'done'], '2026-12-06'), '2026-12-06')).toBe(
		null
	);
});

test('a week of which less than half was done comes again, and is told with its first day', () => {
	const calendar = calendarAfter(['done', 'missed', 'missed'], '2026-12-06');
	expect(comesAgain(calendar, '2026-12-06')).toEqual({ week: 1, from: '2026-12-07' });
});

test('after two weeks without an outing the week before comes again', () => {
	const calendar = calendarAfter(['done', 'done', 'done', 'done'], '2026-12-24');
	const again = comesAgain(calendar, '2026-12-24');
	expect(again).toMatchObject({ week: 1 });
});

test('an outing by itself is no week', () => {
	const alone = { onDate: '2026-12-01', number: null, week: null, state: 'planned' } as const;
	expect(comesAgain([alone], '2026-11-25')).toBe(null);
});
