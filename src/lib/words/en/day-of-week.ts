/** As this language writes it. The locale is named, never taken from the machine. */
const LOCALE = 'en-GB';

/** '2027-11-04' as "Thursday". */
export const dayOfWeek = (date: string) =>
	new Intl.DateTimeFormat(LOCALE, { weekday: 'long', timeZone: 'UTC' }).format(
		new Date(`${date}T00:00:00Z`)
	);
