import { compareDates, daysBetween, localDate, type LocalDate } from './local-date.ts';

const DAY_MS = 86_400_000;

/**
 * The moment at which a date begins in a zone, epoch milliseconds: the first that has that date.
 * Where a clock jumps over midnight, the day begins after the jump.
 *
 * @throws RangeError for what is no date
 * @example startOfDay('1970-01-02', 'UTC') // 86400000
 */
export function startOfDay(date: LocalDate, timeZone: string): number {
	// No zone is more than 14 hours from UTC; a day either way is wide enough.
	const utc = daysBetween('1970-01-01', date) * DAY_MS;
	let before = utc - DAY_MS;
	let from = utc + DAY_MS;
	while (from - before > 1) {
		const middle = Math.floor((before + from) / 2);
		if (compareDates(localDate(middle, timeZone), date) >= 0) from = middle;
		else before = middle;
	}
	return from;
}
