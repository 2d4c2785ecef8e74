import { dateRanges } from '$lib/calendar/date-ranges.ts';
import { addDays, compareDates, type LocalDate } from '$lib/calendar/local-date.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import type { PlannedOuting } from '$lib/server/planned-outings.ts';
import type { CalendarView, DayRow, FreeRow } from './calendar-rows.ts';
import { isNotPast, isOpen } from './over.ts';

/** So far ahead the calendar is open; what comes later is folded. */
const SOON_DAYS = 28;

export function calendarView(
	planned: readonly PlannedOuting[],
	current: { readonly id: string; readonly holidays: readonly LocalDate[] } | null,
	today: LocalDate,
	hotDays: readonly LocalDate[] = []
): CalendarView {
	const close = tooClose(planned);
	const rowOf = (one: PlannedOuting): DayRow => ({
		kind: 'outing',
		id: one.id,
		onDate: one.onDate,
		name: one.outing.name,
		totalSeconds: outingTotals(one.outing).totalSeconds,
		state: one.state,
		isToday: one.onDate === today,
		isHot: hotDays.includes(one.onDate),
		isComing: isNotPast(one, today),
		isOfProgramme: one.programmeId !== null && one.programmeId === current?.id,
		isTooClose: close.has(one.onDate)
	});
	const free = dateRanges(current?.holidays ?? [])
		.filter(({ until }) => compareDates(until, today) >= 0)
		.map((range): FreeRow => ({ kind: 'free', ...range }));
	const coming = [...planned.filter((one) => isNotPast(one, today)).map(rowOf), ...free].sort(
		(one, other) => compareDates(startOf(one), startOf(other))
	);
	const isSoon = (row: DayRow | FreeRow) =>
		compareDates(startOf(row), addDays(today, SOON_DAYS)) <= 0;
	return {
		open: planned.filter((one) => isOpen(one, today)).map(rowOf),
		soon: coming.filter(isSoon),
		later: coming.filter((row) => !isSoon(row)),
		over: planned
			.filter(({ state }) => state !== 'planned')
			.map(rowOf)
			.reverse()
	};
}

const startOf = (row: DayRow | FreeRow) => (row.kind === 'free' ? row.from : row.onDate);

/** The dates of runs that follow each other without a day off, one of them by itself. */
function tooClose(planned: readonly PlannedOuting[]): ReadonlySet<LocalDate> {
	const runs = planned.filter(
		({ outing, state }) => state !== 'missed' && outingTotals(outing).runningSeconds > 0
	);
	const byDate = new Map(runs.map((one) => [one.onDate, one]));
	const dates = runs.flatMap((one) => {
		const next = byDate.get(addDays(one.onDate, 1));
		const isAlone = one.programmeId === null || next?.programmeId === null;
		return next !== undefined && isAlone ? [one.onDate, next.onDate] : [];
	});
	return new Set(dates);
}
