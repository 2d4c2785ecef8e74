import { longestRun } from '../../physiology/longest-run.ts';
import { phaseTargets } from '../phase.ts';
import { FIRST_WEEKS, programmeLimits, STEP_SECONDS, wholeSteps } from './programme-limits.ts';
import type { NearestPossible } from './programme.ts';
import { weekAmounts, type RefusalReason } from './week-amounts.ts';
import { checkWishes, type ProgrammeGoal, type ProgrammeWishes } from './wishes.ts';

const A_MINUTE = 60;

/** What could be wished for instead: each on its own, with all other wishes as they are. */
export function nearestPossible(wishes: ProgrammeWishes, reason: RefusalReason): NearestPossible {
	const { weeks, firstRunSeconds } = programmeLimits;
	const goals = reason === 'goal-already-reached' ? goalsAbove(wishes) : goalsBelow(wishes);
	return {
		weeks: find(counted(wishes.weeks + 1, weeks.high, 1), (more) =>
			isPossible({ ...wishes, weeks: more })
		),
		goal: find(goals, (goal) => isPossible({ ...wishes, goal })),
		firstRunSeconds: find(
			counted(
				wholeSteps(wishes.firstRunSeconds) - STEP_SECONDS,
				firstRunSeconds.low,
				-STEP_SECONDS
			),
			(shorter) => isPossible({ ...wishes, firstRunSeconds: shorter })
		)
	};
}

function isPossible(wishes: ProgrammeWishes): boolean {
	return checkWishes(wishes).length === 0 && typeof weekAmounts(wishes) !== 'string';
}

function find<Wish>(candidates: readonly Wish[], isGood: (wish: Wish) => boolean): Wish | null {
	return candidates.find(isGood) ?? null;
}

function counted(from: number, to: number, step: number): readonly number[] {
	const count = Math.floor((to - from) / step + 1e-9) + 1;
	return Array.from({ length: Math.max(0, count) }, (_, nth) => tenths(from + nth * step));
}

function tenths(amount: number): number {
	return Math.round(amount * 10) / 10;
}

/** Nearer goals, the farthest first; where running on is not in the band, runs and walks in turn. */
function goalsBelow(wishes: ProgrammeWishes): readonly ProgrammeGoal[] {
	const { goal, pulse } = wishes;
	if (goal.kind !== 'walk-and-run' && pulse.staysInBand === 'no') return inTurn(wishes);
	switch (goal.kind) {
		case 'minutes':
			return counted(Math.ceil(goal.minutes) - 1, programmeLimits.goalMinutes.low, -1).map(
				(minutes) => ({ ...goal, minutes })
			);
		case 'distance':
			return counted(tenths(goal.kilometres) - 0.1, programmeLimits.goalKilometres.low, -0.1).map(
				(kilometres) => ({ ...goal, kilometres })
			);
		case 'walk-and-run':
			return runsDown(wholeSteps(goal.longestRunSeconds) - STEP_SECONDS);
	}
}

/**
 * From the longest run that is expected to stay inside the band after a recovery; where that is very
 * short, from a minute, as long as it stays as gentle as the first weeks. Where the first run is as
 * long already, the shortest goal above it.
 */
function inTurn({ pulse, firstRunSeconds }: ProgrammeWishes): readonly ProgrammeGoal[] {
	const inBand = secondsUnder(phaseTargets['steady-run'].reserve.high, pulse);
	const gentle = secondsUnder(FIRST_WEEKS.share, pulse);
	const longest = Math.max(inBand, Math.min(gentle, A_MINUTE));
	const { high } = programmeLimits.goalRunSeconds;
	return [
		...runsDown(Math.min(wholeSteps(longest), high)),
		...runsUp(wholeSteps(firstRunSeconds) + STEP_SECONDS)
	];
}

function secondsUnder(upperEdgeBpm: number, { runShare }: ProgrammeWishes['pulse']): number {
	const startBpm = phaseTargets['recovery-walk'].reserve.high;
	const answer = longestRun({ startBpm, steadyRunBpm: runShare, upperEdgeBpm });
	return answer.kind === 'seconds' ? answer.seconds : programmeLimits.goalRunSeconds.high;
}

function runsDown(from: number): readonly ProgrammeGoal[] {
	return counted(from, programmeLimits.goalRunSeconds.low, -STEP_SECONDS).map(
		(longestRunSeconds) => ({ kind: 'walk-and-run', longestRunSeconds })
	);
}

function runsUp(from: number): readonly ProgrammeGoal[] {
	return counted(from, programmeLimits.goalRunSeconds.high, STEP_SECONDS).map(
		(longestRunSeconds) => ({ kind: 'walk-and-run', longestRunSeconds })
	);
}

function goalsAbove({ goal }: ProgrammeWishes): readonly ProgrammeGoal[] {
	const { goalMinutes, goalKilometres } = programmeLimits;
	switch (goal.kind) {
		case 'minutes':
			return counted(Math.floor(goal.minutes) + 1, goalMinutes.high, 1).map((minutes) => ({
				...goal,
				minutes
			}));
		case 'distance':
			return counted(tenths(goal.kilometres) + 0.1, goalKilometres.high, 0.1).map((kilometres) => ({
				...goal,
				kilometres
			}));
		case 'walk-and-run':
			return runsUp(wholeSteps(goal.longestRunSeconds) + STEP_SECONDS);
	}
}
