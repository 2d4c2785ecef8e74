import { checkDays } from './days.ts';
import type { ProgrammeWishes } from './wishes.ts';

/**
 * The days of the week nearest to those that were chosen: as many as there are outings, with a day
 * off after each where that fits, and as few changes as can be. Of equally near ones the earliest in
 * the week.
 *
 * @param weekdays 1 for Monday to 7 for Sunday; whatever else was sent is left out
 * @example nearestWeekdays([1, 2, 5], 3) // [1, 3, 5]
 * @example nearestWeekdays([], 2) // [1, 3]
 */
export function nearestWeekdays(
	weekdays: readonly number[],
	outingsAWeek: ProgrammeWishes['outingsAWeek']
): readonly number[] {
	const chosen = new Set(weekdays);
	const changes = (days: readonly number[]) =>
		ALL.filter((day) => days.includes(day) !== chosen.has(day)).length;
	return sets()
		.filter((days) => isAllowed(days, outingsAWeek))
		.reduce((one, other) => (changes(other) < changes(one) ? other : one));
}

const ALL = [1, 2, 3, 4, 5, 6, 7];
const A_DAY = '2026-01-01';

function isAllowed(weekdays: readonly number[], outingsAWeek: number): boolean {
	return checkDays({ startsOn: A_DAY, weekdays, holidays: [] }, outingsAWeek, A_DAY).length === 0;
}

/** Every choice of days, those that begin early in the week first. */
function sets(): readonly (readonly number[])[] {
	const all = Array.from({ length: 2 ** ALL.length }, (_, bits) =>
		ALL.filter((_day, nth) => (bits & (1 << (ALL.length - 1 - nth))) !== 0)
	);
	return all.reverse();
}
