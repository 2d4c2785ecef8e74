import { LOCALE } from './locale.ts';

/** '2027-11-04' as "Thursday". */
export const dayOfWeek = (date: string) =>
	new Intl.DateTimeFormat(LOCALE, { weekday: 'long', timeZone: 'UTC' }).format(
		new Date(`${date}T00:00:00Z`)
	);
