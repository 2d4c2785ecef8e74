import { expect, test } from 'vitest';
import { daysToCome, type CalendarDay } from '$lib/outing/programme/days-to-come.ts';
import { whatMoved } from '$lib/outing/programme/what-moved.ts';
import { plainWishes, weeksOf } from './any-wishes.ts';

// Our own rules, no source.

const weeks = weeksOf({ ...plainWishes, outingsAWeek: 2 });
const days = { startsOn: '2026-11-30', weekdays: [1, 4], holidays: [] };
const today = '2026-12-04';
const planned = (calendar: readonly CalendarDay[], holidays: readonly string[] = []) =>
	daysToCome(weeks, { ...days, holidays }, calendar, today);
const first = { number: 1, onDate: '2026-11-30' };
const second = { number: 2, onDate: '2026-12-03' };

test('nothing, where the days to come are the same', () => {
	const are = planned([{ ...first, state: 'done' }]);
	expect(whatMoved(are, are)).toEqual({ again: null, firstMoved: null, end: null });
	expect(whatMoved([], [])).toEqual({ again: null, firstMoved: null, end: null });
});

test('a missed week: its outings come again, the rest a week later', () => {
	const done = (state: CalendarDay['state']) => [
		{ ...first, state: 'missed' as const },
		{ ...second, state }
	];
	expect(whatMoved(planned(done('done')), planned(done('missed')))).toMatchObject({
		again: { first: { number: 1, onDate: '2026-12-07' }, count: 2 },
		firstMoved: { number: 3, onDate: '2026-12-14', insteadOf: '2026-12-07' },
		end: { insteadOf: '2027-03-18', onDate: '2027-03-25' }
	});
});

test('a day off: what would have fallen on it comes on the next day', () => {
	const calendar = [
		{ ...first, state: 'done' as const },
		{ ...second, state: 'done' as const }
	];
	expect(whatMoved(planned(calendar), planned(calendar, ['2026-12-07']))).toMatchObject({
		again: null,
		firstMoved: { number: 3, onDate: '2026-12-10', insteadOf: '2026-12-07' },
		end: { insteadOf: '2027-03-18', onDate: '2027-03-22' }
	});
});
