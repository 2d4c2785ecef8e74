import { addDays, compareDates, isLocalDate, type LocalDate } from '$lib/calendar/local-date.ts';
import { whatMoved, type WhatMoved } from '$lib/outing/programme/what-moved.ts';
import type { PlannedOuting } from '$lib/server/planned-outings.ts';
import type { Programme } from '$lib/server/programmes.ts';
import { calendarDays } from './calendar-days.ts';
import type { JustDone } from './calendar-rows.ts';
import { planner } from './planner.ts';

interface At {
	readonly planned: readonly PlannedOuting[];
	readonly current: Programme | null;
	readonly today: LocalDate;
}

/**
 * What the address says was done just now, worked out anew from the calendar: the days to come as they
 * are beside the days as they would be without it. Null where it is so no more.
 */
export function justDone(search: URLSearchParams, at: At): JustDone | null {
	const id = search.get('said');
	const [from, until] = [search.get('off'), search.get('until')];
	if (id !== null) return said(id, at);
	return isLocalDate(from) && isLocalDate(until) ? takenOff(from, until, at) : null;
}

function said(id: string, { planned, current, today }: At): JustDone | null {
	const day = planned.find((one) => one.id === id);
	if (!day || day.state === 'planned') return null;
	const { onDate, state, outing } = day;
	const calendar = calendarDays(planned, current?.id ?? null);
	const asDone = calendar.map((one) =>
		one.onDate === onDate ? { ...one, state: 'done' as const } : one
	);
	const moved = compared(current, asDone, current, calendar, today);
	return { kind: 'said', id, name: outing.name, onDate, state, moved };
}

function takenOff(
	from: LocalDate,
	until: LocalDate,
	{ planned, current, today }: At
): JustDone | null {
	const isOff = (date: LocalDate) =>
		compareDates(date, from) >= 0 && compareDates(date, until) <= 0;
	if (current === null || !current.holidays.includes(from)) return null;
	const before = { ...current, holidays: current.holidays.filter((date) => !isOff(date)) };
	const calendar = calendarDays(planned, current.id);
	return { kind: 'off', from, until, moved: compared(before, calendar, current, calendar, today) };
}

type Calendar = Parameters<typeof planner>[1];

function compared(
	before: Programme | null,
	would: Calendar,
	current: Programme | null,
	are: Calendar,
	today: LocalDate
): WhatMoved {
	return whatMoved(daysOf(before, would, today), daysOf(current, are, today));
}

function daysOf(programme: Programme | null, calendar: Calendar, today: LocalDate) {
	const inputs = programme?.inputs ?? null;
	if (programme === null || inputs === null) return [];
	return planner({ ...programme, inputs }, calendar, today) ?? [];
}

/** Every date from the first to the last. */
export function datesFrom(from: LocalDate, until: LocalDate): readonly LocalDate[] {
	const dates: LocalDate[] = [];
	for (let date = from; compareDates(date, until) <= 0; date = addDays(date, 1)) dates.push(date);
	return dates;
}
