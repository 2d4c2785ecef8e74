import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '$lib/calendar/local-date.ts';
import { weekdayOf } from '$lib/calendar/weekday.ts';

test('is that of the language’s own calendar, Monday first (ISO 8601)', () => {
	fc.assert(
		fc.property(fc.integer({ min: -200_000, max: 200_000 }), (days) => {
			const date = addDays('2000-01-01', days);
			const sundayFirst = new Date(`${date}T00:00:00Z`).getUTCDay();
			expect(weekdayOf(date)).toBe(sundayFirst === 0 ? 7 : sundayFirst);
		})
	);
});
