import { addDays, compareDates, type LocalDate } from './local-date.ts';

/** Days that follow each other, both ends included. */
export interface DateRange {
	readonly from: LocalDate;
	readonly until: LocalDate;
}

/**
 * Days that follow each other as ranges, by date.
 *
 * @throws RangeError for a date that does not exist
 * @example dateRanges(['2026-12-25', '2026-12-24', '2027-01-01']) // [{ from: '2026-12-24', until: '2026-12-25' }, { from: '2027-01-01', until: '2027-01-01' }]
 */
export function dateRanges(dates: readonly LocalDate[]): readonly DateRange[] {
	const ranges: DateRange[] = [];
	for (const date of [...new Set(dates)].sort(compareDates)) {
		const last = ranges.at(-1);
		if (last !== undefined && addDays(last.until, 1) === date) {
			ranges[ranges.length - 1] = { from: last.from, until: date };
		} else ranges.push({ from: date, until: date });
	}
	return ranges;
}
