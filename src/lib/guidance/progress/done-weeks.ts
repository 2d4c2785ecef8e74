import { addDays, type LocalDate } from '../../calendar/local-date.ts';
import { weekdayOf } from '../../calendar/weekday.ts';
import { doneTotals } from '../../outing/done-totals.ts';
import { growthEvidence } from '../../physiology/growth-evidence.ts';
import type { DatedOuting } from '../next-time/asked.ts';

/** What was done in a week from Monday to Sunday. */
export interface DoneWeek {
	readonly monday: LocalDate;
	readonly outings: number;
	readonly totalSeconds: number;
	readonly runningSeconds: number;
	/** Effort times minutes, of the outings with an effort; null where none has one. */
	readonly effortMinutes: number | null;
}

/** Under so much running a week a jump says nothing. Our own choice, no source. */
const WORTH_A_NOTE_SECONDS = 600;

/**
 * Weeks with this one as the last, oldest first, and none before the first outing.
 * @param atMost how many
 */
export function doneWeeks(
	outings: readonly DatedOuting[],
	today: LocalDate,
	atMost: number
): readonly DoneWeek[] {
	const thisMonday = mondayOf(today);
	const byWeek = Map.groupBy(outings, ({ onDate }) => mondayOf(onDate));
	const mondays = Array.from({ length: atMost }, (_, nth) => addDays(thisMonday, -7 * nth));
	const first = mondays.findLastIndex((monday) => byWeek.has(monday));
	return mondays
		.slice(0, first + 1)
		.reverse()
		.map((monday) => weekOf(monday, byWeek.get(monday) ?? []));
}

function weekOf(monday: LocalDate, outings: readonly DatedOuting[]): DoneWeek {
	const each = outings.map((outing) => ({ ...doneTotals(outing), effort: meanEffort(outing) }));
	const told = each.flatMap(({ totalSeconds, effort }) =>
		effort === null ? [] : [(effort * totalSeconds) / 60]
	);
	return {
		monday,
		outings: outings.length,
		totalSeconds: sumOf(each.map(({ totalSeconds }) => totalSeconds)),
		runningSeconds: sumOf(each.map(({ running }) => running?.seconds ?? 0)),
		effortMinutes: told.length === 0 ? null : sumOf(told)
	};
}

function meanEffort({ answers }: DatedOuting): number | null {
	const told: readonly number[] = answers.flatMap(({ effort }) => effort ?? []);
	return told.length === 0 ? null : sumOf(told) / told.length;
}

const sumOf = (amounts: readonly number[]) => amounts.reduce((all, one) => all + one, 0);

const mondayOf = (date: LocalDate) => addDays(date, 1 - weekdayOf(date));

/**
 * Whether running grew by more than the share that was looked at in new runners (source nielsen2014),
 * from two weeks before to the newest of these weeks.
 * @param weeks oldest first
 */
export function grewFast(weeks: readonly DoneWeek[]): boolean {
	const now = weeks.at(-1)?.runningSeconds ?? 0;
	const before = weeks.at(-3)?.runningSeconds ?? 0;
	if (before === 0 || now < WORTH_A_NOTE_SECONDS) return false;
	return now > before * (1 + growthEvidence.fastGrowth.overPercentInTwoWeeks / 100);
}
