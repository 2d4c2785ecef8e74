/** A calendar date without a clock or zone: 'YYYY-MM-DD'. No change of the clocks touches it. */
export type LocalDate = string;

const DAY_MS = 86_400_000;
const formats = new Map<string, Intl.DateTimeFormat>();

/**
 * The calendar date that a clock on the wall shows at a moment.
 *
 * @param epochMs milliseconds since 1970 in UTC
 * @param timeZone IANA name, such as Europe/Dublin
 * @throws RangeError for a moment or a zone that does not exist
 * @example localDate(1795572000000, 'Europe/Dublin') // '2026-11-25'
 */
export function localDate(epochMs: number, timeZone: string): LocalDate {
	if (!Number.isFinite(epochMs)) throw new RangeError('localDate requires a moment');
	const parts = formatFor(timeZone).formatToParts(new Date(epochMs));
	const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '';
	return needDate(`${part('year')}-${part('month')}-${part('day')}`);
}

function formatFor(timeZone: string): Intl.DateTimeFormat {
	if (typeof timeZone !== 'string') throw new RangeError('localDate requires a time zone');
	const known = formats.get(timeZone);
	if (known) return known;
	const format = new Intl.DateTimeFormat('en-GB', {
		timeZone,
		calendar: 'gregory',
		numberingSystem: 'latn',
		year: 'numeric',
		month: '2-digit',
		day: '2-digit'
	});
	formats.set(timeZone, format);
	return format;
}

/**
 * Whether something is a date that exists, written as YYYY-MM-DD, from the year 1000 on.
 *
 * @example isLocalDate('2028-02-29') // true
 * @example isLocalDate('2027-02-29') // false
 */
export function isLocalDate(value: unknown): value is LocalDate {
	if (typeof value !== 'string' || !/^[1-9]\d{3}-\d{2}-\d{2}$/.test(value)) return false;
	const year = Number(value.slice(0, 4));
	const month = Number(value.slice(5, 7));
	const day = Number(value.slice(8));
	return month >= 1 && month <= 12 && day >= 1 && day <= lastDayOfMonth(year, month);
}

/**
 * The same day some calendar months on, or the last day of that month where it has no such day.
 *
 * @throws RangeError for a date that does not exist, or a number that is not whole
 * @example addMonths('2026-11-24', 12) // '2027-11-24'
 * @example addMonths('2028-02-29', 12) // '2029-02-28'
 */
export function addMonths(date: LocalDate, months: number): LocalDate {
	if (!Number.isInteger(months)) throw new RangeError('addMonths requires whole months');
	const start = utc(date);
	const first = new Date(Date.UTC(start.getUTCFullYear(), start.getUTCMonth() + months, 1));
	const [year, month] = [first.getUTCFullYear(), first.getUTCMonth()];
	const lastDay = lastDayOfMonth(year, month + 1);
	return written(Date.UTC(year, month, Math.min(start.getUTCDate(), lastDay)));
}

/**
 * @throws RangeError for a date that does not exist, or a number that is not whole
 * @example addDays('2028-02-28', 1) // '2028-02-29'
 */
export function addDays(date: LocalDate, days: number): LocalDate {
	if (!Number.isInteger(days)) throw new RangeError('addDays requires whole days');
	return written(utc(date).getTime() + days * DAY_MS);
}

/**
 * Negative when the first date is earlier, 0 when they are the same, positive when it is later.
 *
 * @throws RangeError for a date that does not exist
 * @example compareDates('2026-11-24', '2026-11-25') // -1
 */
export function compareDates(one: LocalDate, other: LocalDate): -1 | 0 | 1 {
	// Written in full and with the year first, dates sort as text.
	if (needDate(one) === needDate(other)) return 0;
	return one < other ? -1 : 1;
}

/**
 * Whole days from one date to another; negative when the second is earlier.
 *
 * @throws RangeError for a date that does not exist
 * @example daysBetween('2028-02-28', '2028-03-01') // 2
 */
export function daysBetween(from: LocalDate, to: LocalDate): number {
	return (utc(to).getTime() - utc(from).getTime()) / DAY_MS;
}

/** Months count from 1, so the day before the first of the next one is day 0. */
function lastDayOfMonth(year: number, month: number): number {
	return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

function utc(date: LocalDate): Date {
	return new Date(`${needDate(date)}T00:00:00Z`);
}

function written(epochMs: number): LocalDate {
	const date = new Date(epochMs);
	if (Number.isNaN(date.getTime()))
		throw new RangeError('a date requires a year from 1000 to 9999');
	return needDate(date.toISOString().slice(0, 10));
}

function needDate(date: string): LocalDate {
	if (!isLocalDate(date)) throw new RangeError(`a date requires a day that exists, not ${date}`);
	return date;
}
