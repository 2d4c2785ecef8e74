import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '$lib/calendar/local-date.ts';
import { weekdayOf } from '$lib/calendar/weekday.ts';
import { checkDays, type ProgrammeDays } from '$lib/outing/programme/days.ts';
import { ownPlace } from '$lib/outing/programme/own-place.ts';
import { planAhead } from '$lib/outing/programme/plan-ahead.ts';
import { ownNumber, standAfter, type Happened } from '$lib/outing/programme/stand.ts';
import { plainWishes, weeksOf } from './any-wishes.ts';

// Our own rules, no source, but where a source is named.

const today = '2026-11-25';
const days: ProgrammeDays = { startsOn: '2026-11-30', weekdays: [1, 3, 6], holidays: [] };
const codes = (changed: Partial<ProgrammeDays>, outingsAWeek = 3) =>
	checkDays({ ...days, ...changed }, outingsAWeek, today).map(({ code }) => code);
const weeks = weeksOf(plainWishes);

describe('the days of a programme', () => {
	test('may begin today, and not before', () => {
		expect(codes({ startsOn: today })).toEqual([]);
		expect(codes({ startsOn: '2026-11-24' })).toEqual(['in-the-past']);
		expect(codes({ startsOn: '2026-02-30' })).toEqual(['not-a-date']);
	});

	test('begin within a year, and no mistyped year goes on to the end of time', () => {
		expect(codes({ startsOn: '2027-11-25' })).toEqual([]);
		expect(codes({ startsOn: '2027-11-26' })).toEqual(['too-far']);
		expect(codes({ startsOn: '9999-12-31' })).toEqual(['too-far']);
	});

	test.each([
		[[1, 3], 3, 'weekdays-not-as-many'],
		[[1, 3, 5], 2, 'weekdays-not-as-many'],
		[[1, 2, 5], 3, 'weekdays-in-a-row'],
		[[1, 4, 7], 3, 'weekdays-in-a-row'],
		[[3, 3, 5], 3, 'weekday-twice'],
		[[0, 3, 5], 3, 'weekday-unknown'],
		[[1.5, 3, 5], 3, 'weekday-unknown'],
		[[1, 3, 5], 4, 'weekdays-not-as-many']
	])('%j for %i a week: %s', (weekdays, outingsAWeek, code) => {
		expect(codes({ weekdays }, outingsAWeek)).toEqual([code]);
	});

	test('four a week may have any four days or more: the calendar leaves out what comes too early', () => {
		expect(codes({ weekdays: [1, 2, 3, 4, 5, 6, 7] }, 4)).toEqual([]);
	});

	test('holidays are days that exist, and not without end', () => {
		expect(codes({ holidays: ['2026-13-01'] })).toEqual(['not-a-date']);
		const many = Array.from({ length: 201 }, (_, nth) => addDays(today, nth));
		expect(codes({ holidays: many })).toEqual(['too-many-holidays']);
	});
});

describe('the calendar', () => {
	test('follows the weekdays from the first day on', () => {
		const dates = planAhead(weeks, days, [], today).map(({ onDate }) => onDate);
		expect(dates.slice(0, 4)).toEqual(['2026-11-30', '2026-12-02', '2026-12-05', '2026-12-07']);
		expect(dates).toHaveLength(48);
	});

	test('moves what falls on a holiday, and all behind it', () => {
		const planned = planAhead(weeks, { ...days, holidays: ['2026-12-02'] }, [], today);
		expect(planned.slice(0, 3).map(({ number, onDate }) => [number, onDate])).toEqual([
			[1, '2026-11-30'],
			[2, '2026-12-05'],
			[3, '2026-12-07']
		]);
	});

	test('after two weeks of holidays the week before comes again', () => {
		// The first two weeks are done by 2026-12-12; the next free day is 2026-12-28, 16 days on.
		const holidays = Array.from({ length: 14 }, (_, nth) => addDays('2026-12-13', nth + 1));
		const planned = planAhead(weeks, { ...days, holidays }, [], today);
		const after = planned.filter(({ onDate }) => onDate >= '2026-12-13');
		expect(after[0]).toMatchObject({ number: 4, week: 2, onDate: '2026-12-28' });
		expect(planned).toHaveLength(51);
	});

	test('plans nothing before today, nor on a day after an outing', () => {
		const late = planAhead(
			weeks,
			days,
			[{ number: 1, onDate: '2026-12-05', state: 'done' }],
			'2026-12-06'
		);
		expect(late[0]).toMatchObject({ number: 2, onDate: '2026-12-07' });
		const inARow = planAhead(
			weeks,
			days,
			[{ number: 1, onDate: '2026-12-06', state: 'done' }],
			'2026-12-06'
		);
		expect(inARow[0]).toMatchObject({ number: 2, onDate: '2026-12-09' });
	});

	// Clocks go forward on 2027-03-28 in Europe and back on 2026-10-25 (EU directive 2000/84).
	test('is not touched by a change of the clocks', () => {
		const through = planAhead(weeks, { ...days, startsOn: '2026-10-19' }, [], '2026-10-19');
		const spring = planAhead(weeks, { ...days, startsOn: '2027-03-22' }, [], '2027-03-22');
		expect(through.slice(0, 6).map(({ onDate }) => onDate)).toEqual([
			'2026-10-19',
			'2026-10-21',
			'2026-10-24',
			'2026-10-26',
			'2026-10-28',
			'2026-10-31'
		]);
		expect(spring.slice(0, 6).map(({ onDate }) => onDate)).toEqual([
			'2027-03-22',
			'2027-03-24',
			'2027-03-27',
			'2027-03-29',
			'2027-03-31',
			'2027-04-03'
		]);
	});

	test('never has two days in a row, a day that was not chosen or a holiday, whatever happened', () => {
		const anyDays = fc.constantFrom(
			[1, 3, 6],
			[2, 4, 7],
			[1, 4],
			[3, 6],
			[1, 2, 3, 4, 5, 6, 7],
			[1, 3, 5, 7]
		);
		const anyHistory = fc.array(fc.constantFrom('done' as const, 'missed' as const), {
			maxLength: 20
		});
		const anyHolidays = fc.uniqueArray(fc.nat({ max: 120 }), { maxLength: 40 });
		fc.assert(
			fc.property(anyDays, anyHistory, anyHolidays, (weekdays, states, free) => {
				const holidays = free.map((nth) => addDays('2026-11-30', nth));
				const asked = { ...days, weekdays, holidays };
				const happened: Happened[] = [];
				let now = today;
				for (const state of states) {
					const [due] = planAhead(weeks, asked, happened, now);
					if (due === undefined) break;
					happened.push({ number: due.number, onDate: due.onDate, state });
					now = due.onDate;
				}
				const done = happened.filter(({ state }) => state === 'done');
				const ahead = planAhead(weeks, asked, happened, now);
				const dates = [...done, ...ahead].map(({ onDate }) => onDate);
				dates.forEach((date, nth) => {
					if (nth > 0) expect(daysBetween(dates[nth - 1]!, date)).toBeGreaterThanOrEqual(2);
				});
				for (const { onDate } of ahead) {
					expect(weekdays).toContain(weekdayOf(onDate));
					expect(holidays).not.toContain(onDate);
				}
				expect(ahead.at(-1)?.number ?? 48).toBe(48);
			}),
			{ numRuns: 300 }
		);
	});

	test('no week of seven days has more than four outings', () => {
		const every = planAhead(weeks, { ...days, weekdays: [1, 2, 3, 4, 5, 6, 7] }, [], today);
		every.forEach(({ onDate }, nth) => {
			const fifth = every[nth + 4];
			if (fifth) expect(daysBetween(onDate, fifth.onDate)).toBeGreaterThanOrEqual(7);
		});
	});
});

describe('where a group stands', () => {
	const tried = (...states: ('done' | 'missed')[]) =>
		states.map((state, nth): Happened => ({
			number: nth + 1,
			state,
			onDate: addDays('2026-11-30', 2 * nth)
		}));

	test('at the first outing before anything happened', () => {
		expect(standAfter(weeks, [])).toMatchObject({ next: { number: 1 }, lastDoneOn: null });
	});

	test('a single missed outing is not made up for', () => {
		expect(standAfter(weeks, tried('done', 'missed')).next?.number).toBe(3);
		expect(standAfter(weeks, tried('done', 'missed', 'done')).next?.number).toBe(4);
	});

	test('a week of which less than half was done comes again', () => {
		expect(standAfter(weeks, tried('missed', 'missed', 'missed')).next?.number).toBe(1);
		expect(standAfter(weeks, tried('done', 'missed', 'missed')).next?.number).toBe(1);
		expect(
			standAfter(weeks, tried('done', 'done', 'done', 'missed', 'missed', 'done')).next?.number
		).toBe(4);
	});

	test('a repeated week counts from its own first outing', () => {
		const again = [
			...tried('missed', 'missed', 'missed'),
			...['done', 'done', 'done'].map((state, nth) => ({
				number: nth + 1,
				state: state as 'done',
				onDate: addDays('2026-12-07', 2 * nth)
			}))
		];
		expect(standAfter(weeks, again).next?.number).toBe(4);
	});

	test('the last outing comes again until it is done', () => {
		const all = tried(...Array<'done'>(47).fill('done'), 'missed');
		expect(standAfter(weeks, all).next?.number).toBe(48);
		const done = [...all, { number: 48, state: 'done' as const, onDate: '2027-06-01' }];
		expect(standAfter(weeks, done).next).toBeNull();
		expect(planAhead(weeks, days, done, '2027-06-02')).toEqual([]);
	});

	test('an outing that is not of the programme is a mistake of the caller', () => {
		expect(() => standAfter(weeks, [{ number: 49, state: 'done', onDate: today }])).toThrow(
			RangeError
		);
	});

	test('the outing of a runner elsewhere is that of its number, as it was planned last', () => {
		const numbered = [
			{ number: 1, name: 'first' },
			{ number: 1, name: 'again' },
			{ number: 2, name: 'second' }
		];
		expect(ownPlace(numbered, 2, -1)).toEqual({ number: 1, name: 'again' });
		expect(ownPlace(numbered, 2, -80)).toEqual({ number: 1, name: 'again' });
		expect(ownPlace(numbered, 1, 80)).toEqual({ number: 2, name: 'second' });
		expect(ownPlace([], 1, 0)).toBe(null);
	});

	test('a runner may stand elsewhere; the programme begins and ends for them too', () => {
		expect(ownNumber({ groupNumber: 10, outingsAhead: -3, lastNumber: 48 })).toBe(7);
		expect(ownNumber({ groupNumber: 46, outingsAhead: 3, lastNumber: 48 })).toBe(48);
		expect(() => ownNumber({ groupNumber: 1, outingsAhead: 0.5, lastNumber: 48 })).toThrow(
			RangeError
		);
	});
});
