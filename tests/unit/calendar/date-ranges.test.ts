import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateRanges } from '$lib/calendar/date-ranges.ts';
import { addDays, daysBetween } from '$lib/calendar/local-date.ts';

test('no dates are no ranges', () => {
	expect(dateRanges([])).toEqual([]);
});

test('ranges hold the same dates, and leave a day between them', () => {
	const dates = fc.array(fc.nat({ max: 60 }).map((nth) => addDays('2026-12-20', nth)));
	fc.assert(
		fc.property(dates, (some) => {
			const ranges = dateRanges(some);
			const written = ranges.flatMap(({ from, until }) =>
				Array.from({ length: daysBetween(from, until) + 1 }, (_, nth) => addDays(from, nth))
			);
			expect(written).toEqual([...new Set(some)].sort());
			ranges.forEach(({ from }, nth) => {
				const before = ranges[nth - 1];
				if (before) expect(daysBetween(before.until, from)).toBeGreaterThan(1);
			});
		})
	);
});
