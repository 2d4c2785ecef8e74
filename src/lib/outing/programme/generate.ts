import { outingTotals } from '../totals.ts';
import { nearestPossible } from './nearest-possible.ts';
import { runningParts, walkingParts, type Parts } from './outing-parts.ts';
import type { NameOuting, ProgrammeAnswer, ProgrammeOuting, ProgrammeWeek } from './programme.ts';
import { settlingInWeeks, weekAmounts } from './week-amounts.ts';
import { checkWishes, type ProgrammeWishes } from './wishes.ts';

/**
 * A programme from walking to a goal, by our own progression: walks first where somebody settles in;
 * then runs of uneven length with timed walks between. A week has at most 14 % more running than the
 * one before, its longest run grows by one factor, and only the last outing reaches the goal.
 * Impossible wishes are refused with the reason and the nearest that can be met.
 *
 * @param nameOuting how an outing is called
 */
export function generateProgramme(
	wishes: ProgrammeWishes,
	nameOuting: NameOuting
): ProgrammeAnswer {
	const issues = checkWishes(wishes);
	if (issues.length > 0) return { kind: 'issues', issues };
	const amounts = weekAmounts(wishes);
	if (typeof amounts === 'string') {
		return { kind: 'refused', reason: amounts, nearest: nearestPossible(wishes, amounts) };
	}
	const { outingsAWeek, pulse } = wishes;
	const walks = Array.from({ length: settlingInWeeks(wishes) }, (_, week) =>
		Array.from({ length: outingsAWeek }, () => walkingParts(week + 1))
	);
	const runs = amounts.map((week) => week.runs.map((lengths) => runningParts(lengths, pulse)));
	return { kind: 'programme', weeks: numbered([...walks, ...runs], nameOuting) };
}

function numbered(
	weeks: readonly (readonly Parts[])[],
	nameOuting: NameOuting
): readonly ProgrammeWeek[] {
	let number = 0;
	let before = 0;
	return weeks.map((week, index): ProgrammeWeek => {
		const outings = week.map((parts): ProgrammeOuting => {
			number += 1;
			const name = nameOuting(number, outingTotals({ parts }).longestRunSeconds);
			return { number, week: index + 1, outing: { name, parts } };
		});
		const totals = outings.map(({ outing }) => outingTotals(outing));
		const runningSeconds = totals.reduce((sum, one) => sum + one.runningSeconds, 0);
		const growth = before === 0 ? null : runningSeconds / before - 1;
		before = runningSeconds;
		return {
			number: index + 1,
			kind: runningSeconds === 0 ? 'settling-in' : 'running',
			runningSeconds,
			longestRunSeconds: Math.max(...totals.map((one) => one.longestRunSeconds)),
			growth,
			outings
		};
	});
}
