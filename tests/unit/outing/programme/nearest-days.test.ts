import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkDays } from '$lib/outing/programme/days.ts';
import { nearestWeekdays } from '$lib/outing/programme/nearest-days.ts';

// Our own rules, no source.

const today = '2026-11-25';
const issues = (weekdays: readonly number[], outingsAWeek: number) =>
	checkDays({ startsOn: today, weekdays, holidays: [] }, outingsAWeek, today);

test.each([
	[[], 3, [1, 3, 5]],
	[[1, 2, 5], 3, [1, 3, 5]],
	[[1, 7], 2, [1, 3]],
	[[2, 4], 3, [2, 4, 6]],
	[[6, 7], 2, [1, 6]],
	[[1, 3, 5], 4, [1, 2, 3, 5]],
	[[1, 2, 3, 4, 5, 6, 7], 2, [1, 3]]
])('instead of %j for %i a week: %j', (chosen, outingsAWeek, expected) => {
	expect(nearestWeekdays(chosen, outingsAWeek)).toEqual(expected);
});

test('they are always allowed, and what is allowed already stays', () => {
	const any = fc.uniqueArray(fc.integer({ min: 1, max: 7 }));
	fc.assert(
		fc.property(any, fc.constantFrom(2, 3, 4), (chosen, outingsAWeek) => {
			const near = nearestWeekdays(chosen, outingsAWeek);
			expect(issues(near, outingsAWeek)).toEqual([]);
			const inOrder = [...chosen].sort((one, other) => one - other);
			if (issues(inOrder, outingsAWeek).length === 0) expect(near).toEqual(inOrder);
		})
	);
});
