import { addDays, compareDates, daysBetween, type LocalDate } from '../../calendar/local-date.ts';
import { weekdayOf } from '../../calendar/weekday.ts';
import type { Outing } from '../outing.ts';
import type { ProgrammeDays } from './days.ts';
import type { ProgrammeOuting, ProgrammeWeek } from './programme.ts';
import { standAfter, type Happened } from './stand.ts';

/** An outing of the programme and its day. */
export interface PlannedDay {
	readonly number: number;
	readonly week: number;
	readonly onDate: LocalDate;
	readonly outing: Outing;
}

/** After so many days without an outing the week before comes again. Our own rule, no source. */
export const LONG_GAP_DAYS = 14;

/**
 * The days of all that a programme has still to come. There is a day off after each outing; whatever
 * would fall on a holiday moves to the next day that is allowed, and all behind it too. Two weeks or
 * more without an outing, by holidays or otherwise, lead one week back. It counts in dates, so that
 * no change of the clocks touches it.
 *
 * @param days without issues; its start may have passed since
 * @param happened what was done and missed so far
 * @param today the date where the group is: nothing is planned before it
 * @throws RangeError for days without weekdays, or an outing that is not of the programme
 */
export function planAhead(
	weeks: readonly ProgrammeWeek[],
	days: ProgrammeDays,
	happened: readonly Happened[],
	today: LocalDate
): readonly PlannedDay[] {
	const stand = standAfter(weeks, happened);
	const all = weeks.flatMap(({ outings }) => outings);
	const holidays = new Set(days.holidays);
	const weekdays = new Set(days.weekdays);
	const isFree = (date: LocalDate) => weekdays.has(weekdayOf(date)) && !holidays.has(date);
	if (weekdays.size === 0) throw new RangeError('planAhead requires weekdays');
	const planned: PlannedDay[] = [];
	let { next, lastDoneOn } = stand;
	let earliest = latest([days.startsOn, today, dayAfter(stand.lastOn, 1)]);
	while (next !== null) {
		const onDate = firstFree(latest([earliest, dayAfter(lastDoneOn, 2)]), isFree);
		const isLongGap = lastDoneOn !== null && daysBetween(lastDoneOn, onDate) >= LONG_GAP_DAYS;
		const due: ProgrammeOuting = isLongGap ? weekBefore(weeks, next) : next;
		planned.push({ ...due, onDate });
		[lastDoneOn, earliest] = [onDate, addDays(onDate, 2)];
		next = all.find(({ number }) => number === due.number + 1) ?? null;
	}
	return planned;
}

/** The first outing of the week before; of the first week its own first. */
function weekBefore(weeks: readonly ProgrammeWeek[], due: ProgrammeOuting): ProgrammeOuting {
	const week = weeks[Math.max(0, due.week - 2)];
	return week?.outings[0] ?? due;
}

function firstFree(from: LocalDate, isFree: (date: LocalDate) => boolean): LocalDate {
	let date = from;
	while (!isFree(date)) date = addDays(date, 1);
	return date;
}

function dayAfter(date: LocalDate | null, days: number): LocalDate | null {
	return date === null ? null : addDays(date, days);
}

function latest(dates: readonly (LocalDate | null)[]): LocalDate {
	return dates
		.filter((date) => date !== null)
		.reduce((one, other) => (compareDates(one, other) >= 0 ? one : other));
}
