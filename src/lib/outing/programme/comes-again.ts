import { compareDates, type LocalDate } from '../../calendar/local-date.ts';
import type { CalendarDay } from './days-to-come.ts';

/** A week of a programme that comes once more, and its next day. */
export interface ComesAgain {
	readonly week: number;
	readonly from: LocalDate;
}

type Day = CalendarDay & { readonly week: number | null };

/**
 * The week that comes again: the next outing is one that has had its day before, or lies before one
 * that had. Null where the programme goes on.
 *
 * @param days of one programme, in any order
 * @param today the date where the group is
 * @example comesAgain([], '2026-11-25') // null
 */
export function comesAgain(days: readonly Day[], today: LocalDate): ComesAgain | null {
	const isToCome = ({ state, onDate }: Day) =>
		state === 'planned' && compareDates(onDate, today) >= 0;
	const [next] = days.filter(isToCome).sort((one, other) => compareDates(one.onDate, other.onDate));
	if (next === undefined || next.number === null || next.week === null) return null;
	const { number, week, onDate: from } = next;
	const came = days.some((day) => !isToCome(day) && day.number !== null && day.number >= number);
	return came ? { week, from } : null;
}
