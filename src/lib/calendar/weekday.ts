import { daysBetween, type LocalDate } from './local-date.ts';

/** 1 for Monday to 7 for Sunday, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

const A_MONDAY = '2024-01-01';

/**
 * @throws RangeError for a date that does not exist
 * @example weekdayOf('2026-11-25') // 3
 */
export function weekdayOf(date: LocalDate): Weekday {
	const days = daysBetween(A_MONDAY, date);
	return ((((days % 7) + 7) % 7) + 1) as Weekday;
}
