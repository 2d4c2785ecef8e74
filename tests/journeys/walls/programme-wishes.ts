import { plusDays, todayIn } from '../days.ts';

const today = () => todayIn('Europe/Dublin');
const weekdayOf = (day: string) => String(new Date(`${day}T00:00Z`).getUTCDay() || 7);

/** The day of the programme's second outing, and its days of the week: today's and three days on. */
export const secondDay = () => plusDays(today(), 3);
export const programmeDays = () => [weekdayOf(today()), weekdayOf(secondDay())];

/** A programme that begins today, where Odile's group is. */
export const programmeWishes = () => ({
	weeks: '16',
	outingsAWeek: '2',
	firstRun: '0:40',
	goalKind: 'minutes',
	goalMinutes: '20',
	startsOn: today(),
	weekdays: programmeDays()
});
