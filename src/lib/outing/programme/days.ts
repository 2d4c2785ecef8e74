import { addMonths, compareDates, isLocalDate, type LocalDate } from '../../calendar/local-date.ts';
import type { ProgrammeWishes } from './wishes.ts';

/** On which days a programme may have its outings. */
export interface ProgrammeDays {
	readonly startsOn: LocalDate;
	/** 1 for Monday to 7 for Sunday. */
	readonly weekdays: readonly number[];
	/** Dates on which there is no outing. */
	readonly holidays: readonly LocalDate[];
}

export interface DayIssue {
	readonly code:
		| 'not-a-date'
		| 'in-the-past'
		| 'too-far'
		| 'weekday-unknown'
		| 'weekday-twice'
		/** Another number of weekdays than outings a week. */
		| 'weekdays-not-as-many'
		/** Sunday and Monday are two days in a row as well. */
		| 'weekdays-in-a-row'
		| 'too-many-holidays';
	readonly field: keyof ProgrammeDays;
}

export const MOST_HOLIDAYS = 200;
/** A start that lies farther ahead is a slip of the hand. Common practice, no source. */
const LATEST_START_MONTHS = 12;
/** So many do not fit into seven days with a day off between each. */
const DO_NOT_FIT = 4;

/**
 * What is wrong with the days of a programme. Up to three outings a week have as many weekdays, never
 * two in a row. Four do not fit into a week with a day off after each: they take four weekdays or
 * more, and the days of outings then leave out what comes too early.
 *
 * @param today the date where the group is
 * @example checkDays({ startsOn: '2026-11-24', weekdays: [2, 4], holidays: [] }, 2, '2026-11-25') // [{ code: 'in-the-past', field: 'startsOn' }]
 */
export function checkDays(
	{ startsOn, weekdays, holidays }: ProgrammeDays,
	outingsAWeek: ProgrammeWishes['outingsAWeek'],
	today: LocalDate
): readonly DayIssue[] {
	return [
		...startIssues(startsOn, today),
		...weekdayIssues(weekdays, outingsAWeek),
		...holidayIssues(holidays)
	];
}

function startIssues(startsOn: LocalDate, today: LocalDate): readonly DayIssue[] {
	const field = 'startsOn';
	if (!isLocalDate(startsOn)) return [{ code: 'not-a-date', field }];
	if (compareDates(startsOn, today) < 0) return [{ code: 'in-the-past', field }];
	const last = addMonths(today, LATEST_START_MONTHS);
	return compareDates(startsOn, last) > 0 ? [{ code: 'too-far', field }] : [];
}

function weekdayIssues(weekdays: readonly number[], outingsAWeek: number): readonly DayIssue[] {
	const field = 'weekdays';
	if (!weekdays.every((day) => Number.isInteger(day) && day >= 1 && day <= 7)) {
		return [{ code: 'weekday-unknown', field }];
	}
	const distinct = new Set(weekdays);
	if (distinct.size < weekdays.length) return [{ code: 'weekday-twice', field }];
	if (outingsAWeek >= DO_NOT_FIT) {
		return weekdays.length < outingsAWeek ? [{ code: 'weekdays-not-as-many', field }] : [];
	}
	if (weekdays.length !== outingsAWeek) return [{ code: 'weekdays-not-as-many', field }];
	const inARow = weekdays.some((day) => distinct.has((day % 7) + 1));
	return inARow ? [{ code: 'weekdays-in-a-row', field }] : [];
}

function holidayIssues(holidays: readonly LocalDate[]): readonly DayIssue[] {
	const field = 'holidays';
	if (holidays.length > MOST_HOLIDAYS) return [{ code: 'too-many-holidays', field }];
	return holidays.every(isLocalDate) ? [] : [{ code: 'not-a-date', field }];
}
