/** Each walk of a walk check: by then a pulse at an even speed has nearly settled (hunt2015). */
export const CHECK_WALK_SECONDS = 180;
/** The pulse is counted in the last part of a walk, while walking on. */
export const COUNT_SECONDS = 15;
/** Before that there is time to find it. Our own choice, no source. */
export const FIND_PULSE_SECONDS = 30;
/** After so long the pulse at the end of a walk is gone from a head. Our own choice, no source. */
export const LATE_SECONDS = 60;

/** Where somebody is in a timed walk. */
export type WalkMoment =
	| { readonly kind: 'walk' | 'find-pulse' | 'count'; readonly leftSeconds: number }
	/** Late: what the pulse was at the end is no longer known, unless they still walk. */
	| { readonly kind: 'over'; readonly isLate: boolean }
	/** The clock of the phone was set back behind the start: nobody can say where they are. */
	| { readonly kind: 'not-known' };

/**
 * Where a walk is, from two readings of the clock and nothing between: a phone that slept or a page
 * that was loaded again is as right as one that ticked.
 *
 * @param startedAt milliseconds of the clock
 * @param now milliseconds of the same clock
 * @example walkMoment(0, 60_000) // { kind: 'walk', leftSeconds: 120 }
 * @example walkMoment(0, 170_500) // { kind: 'count', leftSeconds: 10 }
 */
export function walkMoment(startedAt: number, now: number): WalkMoment {
	if (!(now >= startedAt)) return { kind: 'not-known' };
	const done = (now - startedAt) / 1000;
	const left = CHECK_WALK_SECONDS - done;
	if (left <= 0) return { kind: 'over', isLate: -left > LATE_SECONDS };
	const leftSeconds = Math.ceil(left);
	if (left <= COUNT_SECONDS) return { kind: 'count', leftSeconds };
	return {
		kind: left <= COUNT_SECONDS + FIND_PULSE_SECONDS ? 'find-pulse' : 'walk',
		leftSeconds
	};
}
