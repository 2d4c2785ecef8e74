import { programmeLimits, STEP_SECONDS } from './programme-limits.ts';

/** What the last outing of a programme reaches. */
export type ProgrammeGoal =
	/** Minutes of running without a stop. */
	| { readonly kind: 'minutes'; readonly minutes: number }
	/** Kilometres of running without a stop, at a speed. */
	| { readonly kind: 'distance'; readonly kilometres: number; readonly speedKmh: number }
	/** Runs and walks in turn, with runs of up to so long. A full goal of its own. */
	| { readonly kind: 'walk-and-run'; readonly longestRunSeconds: number };

/**
 * What the pulse of the group's middle runner is taken to do, in shares of the heart-rate reserve.
 */
export interface ProgrammePulse {
	/** Where a run would settle that never ended. */
	readonly runShare: number;
	/** Where a recovery walk would. */
	readonly walkShare: number;
	/** Whether running without a stop is expected to stay inside the band. */
	readonly staysInBand: 'yes' | 'no' | 'not-known';
}

/**
 * Where nobody's capacity is known: a slow run and a natural walk of somebody unfit, at 72 % and 35 %
 * of the uptake reserve (ACSM equations at 114 and 110 m/min with a capacity of 35; computed).
 */
export const unknownPulse: ProgrammePulse = {
	runShare: 0.72,
	walkShare: 0.35,
	staysInBand: 'not-known'
};

/** What a coach wishes a programme to be. */
export interface ProgrammeWishes {
	/** All weeks, those of settling in included. */
	readonly weeks: number;
	readonly outingsAWeek: number;
	/** The longest run of the first week with runs. */
	readonly firstRunSeconds: number;
	readonly goal: ProgrammeGoal;
	/** Walks first, and runs that stay gentle until eight weeks have passed. */
	readonly settlingIn: boolean;
	readonly pulse: ProgrammePulse;
}

export interface WishIssue {
	readonly code: 'out-of-limits' | 'not-whole';
	readonly field: 'weeks' | 'outingsAWeek' | 'firstRunSeconds' | 'goal';
}

/** The longest run that the goal asks for, up to whole steps. */
export function goalSeconds(goal: ProgrammeGoal): number {
	return Math.ceil(exactSeconds(goal) / STEP_SECONDS - 1e-9) * STEP_SECONDS;
}

function exactSeconds(goal: ProgrammeGoal): number {
	switch (goal.kind) {
		case 'minutes':
			return goal.minutes * 60;
		case 'distance':
			return (goal.kilometres / goal.speedKmh) * 3600;
		case 'walk-and-run':
			return goal.longestRunSeconds;
	}
}

/**
 * What is wrong with wishes by themselves, before asking whether they fit together.
 *
 * @example checkWishes({ weeks: 30, outingsAWeek: 3, firstRunSeconds: 50, goal: { kind: 'minutes', minutes: 30 }, settlingIn: true, pulse: unknownPulse }) // [{ code: 'out-of-limits', field: 'weeks' }]
 */
export function checkWishes(wishes: ProgrammeWishes): readonly WishIssue[] {
	const { weeks, outingsAWeek, firstRunSeconds, goal } = wishes;
	const issues: WishIssue[] = [];
	const need = (field: WishIssue['field'], isInside: boolean, isWhole = true) => {
		if (!isInside) issues.push({ code: 'out-of-limits', field });
		else if (!isWhole) issues.push({ code: 'not-whole', field });
	};
	need('weeks', within(programmeLimits.weeks, weeks), Number.isInteger(weeks));
	need(
		'outingsAWeek',
		within(programmeLimits.outingsAWeek, outingsAWeek),
		Number.isInteger(outingsAWeek)
	);
	need('firstRunSeconds', within(programmeLimits.firstRunSeconds, firstRunSeconds));
	need('goal', goalIsInside(goal));
	return issues;
}

function goalIsInside(goal: ProgrammeGoal): boolean {
	switch (goal.kind) {
		case 'minutes':
			return within(programmeLimits.goalMinutes, goal.minutes);
		case 'distance':
			return (
				within(programmeLimits.goalKilometres, goal.kilometres) &&
				within(programmeLimits.goalKmh, goal.speedKmh) &&
				within(programmeLimits.goalMinutes, exactSeconds(goal) / 60)
			);
		case 'walk-and-run':
			return within(programmeLimits.goalRunSeconds, goal.longestRunSeconds);
	}
}

function within(range: { readonly low: number; readonly high: number }, entered: number): boolean {
	return entered >= range.low && entered <= range.high;
}
