/*
 * Days of the calendar, reckoned on their own and not by the app's code. A day is 'YYYY-MM-DD'.
 */

const DAY_MS = 24 * 60 * 60 * 1000;

/** Where the journeys about dates are made: the day there has often begun when it has not in UTC. */
export const ZONE = 'Pacific/Auckland';

/** The day that a clock on the wall shows. */
export function todayIn(zone = ZONE, at = Date.now()): string {
	// Swedish writes a day as ISO 8601 does.
	return new Intl.DateTimeFormat('sv-SE', { timeZone: zone }).format(at);
}

/** The day where the server is, which counts for whoever told no time zone. */
export const todayHere = () => todayIn(Intl.DateTimeFormat().resolvedOptions().timeZone);

export function plusDays(day: string, days: number): string {
	return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** How many midnights lie between two days. */
export function daysBetween(from: string, to: string): number {
	return (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS;
}

/** The same day of the month a year on; 29 February becomes 28 February. */
export function aYearAfter(day: string): string {
	const [year, rest] = [Number(day.slice(0, 4)) + 1, day.slice(4)];
	return rest === '-02-29' ? `${year}-02-28` : `${year}${rest}`;
}

/** As the pages write it: 25 November 2026. */
export function written(day: string): string {
	const format = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
	return format.format(new Date(`${day}T00:00:00Z`));
}

/** The next day, from a day on, on which the clocks of a zone change. */
export function clockChangeIn(zone: string, from: string): string {
	const offset = (day: string) =>
		new Intl.DateTimeFormat('en-GB', { timeZone: zone, timeZoneName: 'longOffset' })
			.formatToParts(Date.parse(`${day}T00:00:00Z`))
			.find(({ type }) => type === 'timeZoneName')?.value;
	for (let days = 0; days < 366; days++) {
		const day = plusDays(from, days);
		if (offset(day) !== offset(plusDays(day, 1))) return day;
	}
	throw new Error(`the clocks of ${zone} do not change`);
}
