import { addDays, compareDates, type LocalDate } from '../../calendar/local-date.ts';
import type { ProgrammeDays } from './days.ts';
import { planAhead, type PlannedDay } from './plan-ahead.ts';
import type { ProgrammeWeek } from './programme.ts';
import type { Happened } from './stand.ts';

/** What stands on a day of a group. */
export interface CalendarDay {
	readonly onDate: LocalDate;
	/** Its place in the programme; null for an outing by itself, or of an earlier programme. */
	readonly number: number | null;
	readonly state: 'planned' | 'done' | 'missed';
}

/**
 * The days that a programme has still to come, around what stands in the calendar: nothing falls on
 * a day that has an outing already, nor on the day after one that was done. A day that passed
 * without a word counts as done until somebody says otherwise, so that a calendar which nobody
 * keeps stays as it was planned. Our own rules, no source.
 *
 * @param calendar all days of the group, in any order
 * @param today the date where the group is
 * @throws RangeError for days without weekdays, or an outing that is not of the programme
 */
export function daysToCome(
	weeks: readonly ProgrammeWeek[],
	days: ProgrammeDays,
	calendar: readonly CalendarDay[],
	today: LocalDate
): readonly PlannedDay[] {
	const happened = calendar.flatMap((day) => happenedOn(day, today));
	const taken = calendar
		.filter(({ number, state }) => number === null || state !== 'planned')
		.flatMap(({ onDate, state }) => (state === 'done' ? [onDate, addDays(onDate, 1)] : [onDate]));
	return planAhead(weeks, { ...days, holidays: [...days.holidays, ...taken] }, happened, today);
}

function happenedOn({ onDate, number, state }: CalendarDay, today: LocalDate): readonly Happened[] {
	if (number === null) return [];
	if (state !== 'planned') return [{ number, onDate, state }];
	return compareDates(onDate, today) < 0 ? [{ number, onDate, state: 'done' }] : [];
}
