/** Dates and times as this language writes them. The locale is named, never taken from the machine. */
const LOCALE = 'en-GB';

/** '2027-11-04' as "4 November 2027". */
export const longDate = (date: string) =>
	new Intl.DateTimeFormat(LOCALE, { dateStyle: 'long', timeZone: 'UTC' }).format(
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

/** 3.4 as "3.4", 10 as "10.0": a fixed number of decimals. */
export const decimal = (value: number, decimals: number) =>
	new Intl.NumberFormat(LOCALE, {
		minimumFractionDigits: decimals,
		maximumFractionDigits: decimals
	}).format(value);

/** 3.4121 as "3.4", 0.00004823 as "0.000048": two digits that count. */
export const twoDigits = (value: number) =>
	new Intl.NumberFormat(LOCALE, { maximumSignificantDigits: 2 }).format(value);

/** 0.62 as "62". */
export const wholePercent = (fraction: number) => String(Math.round(fraction * 100));

/** 0.62 as "62 %". */
export const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;

/** Seconds as "1:20". */
export const minutesAndSeconds = (seconds: number) =>
	`${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
