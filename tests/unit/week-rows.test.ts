import { expect, test } from 'vitest';
import { plainWishes, weeksOf } from './outing/programme/any-wishes.ts';
import { courseWith } from './guidance/expected/any-course.ts';
import { weekRows } from '../../src/routes/coach/[group]/programme/week-rows.ts';

// Our own rules, no source.

const weeks = weeksOf({ ...plainWishes, settlingIn: true });
const off = { course: { kind: 'no-course', why: 'pulse-off' } } as const;
const strong = { course: courseWith(40) };
/** The slowest run costs 20.2 mL/kg/min (ACSM): more than this runner has. */
const weak = { course: courseWith(18) };

test('where each week is of all who have a curve, one number says of whom', () => {
	const { runners, isOfAll, rows } = weekRows(weeks, [strong, strong, off]);
	expect([runners, isOfAll]).toEqual([2, true]);
	expect(rows.every((row) => row.runners === 2)).toBe(true);
});

test('where a week leaves somebody out, each says of how many it is', () => {
	const { runners, isOfAll, rows } = weekRows(weeks, [strong, strong, weak, off]);
	expect([runners, isOfAll]).toEqual([3, false]);
	for (const row of rows) expect(row.runners).toBe(row.runningSeconds > 0 ? 2 : 3);
});

test('a week that is too much for everybody has no number, and is of nobody', () => {
	const { runners, isOfAll, rows } = weekRows(weeks, [weak]);
	expect([runners, isOfAll]).toEqual([1, false]);
	expect(rows.at(-1)).toMatchObject({ runners: 0, meanShare: null, peakShare: null });
	expect(rows[0]).toMatchObject({ runners: 1, isSettlingIn: true });
});

test('without anybody who has a curve there is none', () => {
	expect(weekRows(weeks, [off])).toMatchObject({ runners: 0, isOfAll: true });
});
