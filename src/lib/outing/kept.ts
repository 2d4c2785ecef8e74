import type { Outing, OutingPhase } from './outing.ts';
import type { SpeedUnit } from './typed-speed.ts';

/** Where a group calls help from, and who helps there, as its coach wrote it. */
export interface HelpHere {
	/** Asked of the coach and never guessed. Without it no outing starts and nothing is printed. */
	readonly emergencyNumber: string | null;
	readonly meetingPoint: string | null;
	readonly defibrillator: string | null;
	readonly firstAider: string | null;
}

/** An outing that lies ahead, as the runner may do it. */
export interface KeptOuting {
	/** Of the group's planned outing. */
	readonly id: string;
	readonly groupName: string;
	/** YYYY-MM-DD. */
	readonly onDate: string;
	readonly number: number | null;
	readonly outing: Outing;
	readonly walksInstead: boolean;
	/** How long its runs are at most where some had to end sooner; else null. */
	readonly shortenedToSeconds: number | null;
	readonly state: 'planned' | 'done' | 'missed';
	/** Not there in what was kept by an older app. */
	readonly help?: HelpHere;
}

/** An outing that belongs to no day: a runner's own, or the usual one. */
export interface KeptOwnOuting {
	readonly id: string;
	readonly outing: Outing;
	readonly walksInstead: boolean;
	readonly shortenedToSeconds: number | null;
}

/** A band that an outing asks for within that of its kind, in beats. */
export interface Narrower<Phase> {
	readonly of: Pick<OutingPhase, 'kind' | 'target'>;
	readonly pulse: Phase extends { readonly pulse: infer Pulse } ? Pulse : unknown;
}

/** What a phone may keep of a runner, and until when. */
export interface KeptForRunner<Phase> {
	readonly open: true;
	/** Tells one runner from another on this phone, and nothing else. */
	readonly runnerKey: string;
	/** The server's clock, epoch milliseconds. */
	readonly servedAt: number;
	/** The end of the result, or fourteen days from now, whichever comes first. */
	readonly grantEndsAt: number;
	readonly timeZone: string;
	/** Asked of the coach and never guessed. Without it no outing starts and nothing is printed. */
	readonly emergencyNumber: string | null;
	readonly mayRun: boolean;
	readonly settlingIn: boolean;
	/** How long a run may last in the weeks after settling in; null where nothing limits it. */
	readonly longestRunSeconds: number | null;
	readonly pulseOn: boolean;
	/** The ends of the pulse's axis; null where there is no band in beats. */
	readonly axis: { readonly restingBpm: number; readonly maximumBpm: number } | null;
	/** From the care team: the only number that stands with pulse off. */
	readonly careTeamLimitBpm: number | null;
	readonly speedUnit: SpeedUnit;
	/** Of a pace outdoors; not there in what was kept by an older app. */
	readonly paceUnit?: 'min/km' | 'min/mile';
	readonly phases: readonly Phase[];
	/** For phases that have a target of their own, by kind and target. */
	readonly narrower: readonly Narrower<Phase>[];
	readonly outings: readonly KeptOuting[];
	/** Days that a coach of the runner's marked as hot; not there in what was kept by an older app. */
	readonly hotDays?: readonly string[];
	/** Outing runs after which the morning was answered about, perhaps elsewhere. */
	readonly answeredMornings?: readonly string[];
	readonly own: readonly KeptOwnOuting[];
	readonly usual: Outing;
}

/** Where a grant stands. Everything that cannot be right closes it. */
export type GrantState = 'open' | 'ended' | 'clock-set-back';

/** How far a phone corrects its own clock without anybody setting it. Common practice, no source. */
const CORRECTED_MS = 2 * 60 * 1000;

/**
 * Whether kept numbers may be shown now. A clock that was set back could make a grant last for ever,
 * so the highest time that was ever seen is kept, the server's among them.
 */
export function grantState(
	{ grantEndsAt }: Pick<KeptForRunner<never>, 'grantEndsAt'>,
	highestSeenMs: number,
	nowMs: number
): GrantState {
	if (!Number.isFinite(nowMs) || nowMs < highestSeenMs - CORRECTED_MS) return 'clock-set-back';
	return Math.max(nowMs, highestSeenMs) < grantEndsAt ? 'open' : 'ended';
}
