import type { Outing } from '../outing.ts';
import type { RefusalReason } from './week-amounts.ts';
import type { ProgrammeGoal, WishIssue } from './wishes.ts';

export interface ProgrammeOuting {
	/** Its place in the programme, from 1. */
	readonly number: number;
	/** Week of the programme, from 1. */
	readonly week: number;
	readonly outing: Outing;
}

export interface ProgrammeWeek {
	readonly number: number;
	readonly kind: 'settling-in' | 'running';
	readonly runningSeconds: number;
	readonly longestRunSeconds: number;
	/** How much more running than in the week before, 0.14 for 14 %; null with nothing to compare. */
	readonly growth: number | null;
	readonly outings: readonly ProgrammeOuting[];
}

/** Wishes that can be met, each with all the others as they are; null where none of its kind can. */
export interface NearestPossible {
	/** More weeks. */
	readonly weeks: number | null;
	/** A nearer goal, or a farther one where it is reached already. */
	readonly goal: ProgrammeGoal | null;
	/** A shorter first run. */
	readonly firstRunSeconds: number | null;
}

export type ProgrammeAnswer =
	| { readonly kind: 'programme'; readonly weeks: readonly ProgrammeWeek[] }
	| { readonly kind: 'issues'; readonly issues: readonly WishIssue[] }
	| {
			readonly kind: 'refused';
			readonly reason: RefusalReason;
			readonly nearest: NearestPossible;
	  };

/** Words are not this folder's: how an outing is called by its number and longest run, 0 for a walk. */
export type NameOuting = (number: number, longestRunSeconds: number) => string;
