/** Dates and times as this language writes them. */
import { LOCALE } from './locale.ts';

/** '2027-11-04' as "4 November 2027". */
export const longDate = (date: string) =>
	new Intl.DateTimeFormat(LOCALE, { dateStyle: 'long', timeZone: 'UTC' }).format(
		new Date(`${date}T00:00:00Z`)
	);

/** '2027-11-04' as "4 Nov", where there is room for no more and the year is known. */
export const shortDate = (date: string) =>
	new Intl.DateTimeFormat(LOCALE, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
		new Date(`${date}T00:00:00Z`)
	);

/** An instant as a day and time in somebody's time zone. */
export const dayAndTime = (epochMs: number, timeZone: string) =>
	new Intl.DateTimeFormat(LOCALE, { dateStyle: 'long', timeStyle: 'short', timeZone }).format(
		new Date(epochMs)
	);

/** An instant as a clock time in somebody's time zone. */
export const clockTime = (epochMs: number, timeZone: string) =>
	new Intl.DateTimeFormat(LOCALE, { timeStyle: 'short', timeZone }).format(new Date(epochMs));

/** Seconds as "1:20". */
export const minutesAndSeconds = (seconds: number) =>
	`${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
