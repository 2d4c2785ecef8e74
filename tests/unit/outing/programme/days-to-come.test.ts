import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, compareDates, localDate } from '$lib/calendar/local-date.ts';
import { startOfDay } from '$lib/calendar/start-of-day.ts';
import { weekdayOf } from '$lib/calendar/weekday.ts';
import type { ProgrammeDays } from '$lib/outing/programme/days.ts';
import { daysToCome, type CalendarDay } from '$lib/outing/programme/days-to-come.ts';
import { planAhead } from '$lib/outing/programme/plan-ahead.ts';
import { plainWishes, weeksOf } from './any-wishes.ts';

// Our own rules, no source, but where a source is named.

const days: ProgrammeDays = { startsOn: '2026-11-30', weekdays: [1, 3, 6], holidays: [] };
const weeks = weeksOf(plainWishes);
const first = (calendar: readonly CalendarDay[], today: string, count = 3) =>
	daysToCome(weeks, days, calendar, today)
		.slice(0, count)
		.map(({ number, onDate }) => [number, onDate]);

describe('the days to come', () => {
	test('with an empty calendar are the plan', () => {
		expect(daysToCome(weeks, days, [], '2026-11-25')).toEqual(
			planAhead(weeks, days, [], '2026-11-25')
		);
	});

	test('go around an outing by itself, and leave the day after one that was done', () => {
		const alone = { onDate: '2026-12-02', number: null };
		expect(first([{ ...alone, state: 'planned' }], '2026-11-25')).toEqual([
			[1, '2026-11-30'],
			[2, '2026-12-05'],
			[3, '2026-12-07']
		]);
		const before = { onDate: '2026-11-29', number: null, state: 'done' } as const;
		expect(first([before], '2026-11-29', 1)).toEqual([[1, '2026-12-02']]);
	});

	test('take a day that passed without a word for done, and today for still to come', () => {
		const calendar: CalendarDay[] = [
			{ onDate: '2026-11-30', number: 1, state: 'planned' },
			{ onDate: '2026-12-02', number: 2, state: 'planned' },
			{ onDate: '2026-12-05', number: 3, state: 'planned' }
		];
		expect(first(calendar, '2026-12-05')).toEqual([
			[3, '2026-12-05'],
			[4, '2026-12-07'],
			[5, '2026-12-09']
		]);
		expect(first(calendar, '2026-12-06', 1)).toEqual([[4, '2026-12-07']]);
	});

	test('are the same again, in whatever order and however often they are worked out', () => {
		const states = fc.array(fc.constantFrom('done', 'missed', 'planned'), { maxLength: 12 });
		fc.assert(
			fc.property(states, (said) => {
				let today = '2026-11-25';
				const calendar: CalendarDay[] = [];
				for (const state of said) {
					const [due] = daysToCome(weeks, days, calendar, today);
					if (due === undefined) break;
					calendar.push({ number: due.number, onDate: due.onDate, state });
					today = addDays(due.onDate, 1);
				}
				const ahead = daysToCome(weeks, days, calendar, today);
				expect(daysToCome(weeks, days, calendar.toReversed(), today)).toEqual(ahead);
				const still = ahead.map(({ number, onDate }) => ({
					number,
					onDate,
					state: 'planned' as const
				}));
				expect(daysToCome(weeks, days, [...calendar, ...still], today)).toEqual(ahead);
			}),
			{ numRuns: 100 }
		);
	});

	// Clocks change on 2026-10-25 and 2027-03-28 in Ireland (EU directive 2000/84), on 2026-11-01 and
	// 2027-03-14 in New York (Energy Policy Act of 2005), on 2027-04-04 by half an hour on Lord Howe.
	test.each([
		['Europe/Dublin', '2026-10-19'],
		['Europe/Dublin', '2027-03-22'],
		['America/New_York', '2026-10-26'],
		['America/New_York', '2027-03-08'],
		['Australia/Lord_Howe', '2027-03-29']
	])('in %s keep their weekdays through a change of the clocks after %s', (zone, startsOn) => {
		const minute = 60_000;
		for (let nth = 0; nth < 16; nth++) {
			const date = addDays(startsOn, nth);
			const begins = startOfDay(date, zone);
			const ends = startOfDay(addDays(date, 1), zone) - minute;
			for (const moment of [begins, ends]) {
				const today = localDate(moment, zone);
				expect(today).toBe(date);
				const planned = daysToCome(weeks, { ...days, startsOn }, [], today);
				for (const { onDate } of planned) {
					expect(days.weekdays).toContain(weekdayOf(onDate));
					expect(compareDates(onDate, today)).toBeGreaterThanOrEqual(0);
				}
				const [next] = planned;
				const isDay = days.weekdays.includes(weekdayOf(today));
				expect(next?.onDate === today).toBe(isDay);
			}
		}
	});
});
