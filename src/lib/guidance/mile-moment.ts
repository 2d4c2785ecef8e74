import { limits } from '../physiology/limits.ts';
import { COUNT_SECONDS } from './walk-moment.ts';

/** The start of a mile, and its end once it is there, in milliseconds of one clock. */
export interface TimedMile {
	readonly startedAt: number;
	readonly endedAt: number | null;
}

export type MileMoment =
	| { readonly kind: 'going'; readonly seconds: number }
	/** Beats are counted from the end of the mile on. */
	| { readonly kind: 'count'; readonly leftSeconds: number }
	| { readonly kind: 'done' }
	/** Longer than anybody takes who walks a mile fast: it was forgotten. */
	| { readonly kind: 'too-long' }
	/** The clock was set back behind the start or the end. */
	| { readonly kind: 'not-known' };

/**
 * Where a timed mile is, from readings of the clock and nothing between.
 *
 * @example mileMoment({ startedAt: 0, endedAt: null }, 61_500) // { kind: 'going', seconds: 61 }
 * @example mileMoment({ startedAt: 0, endedAt: 900_000 }, 905_000) // { kind: 'count', leftSeconds: 10 }
 */
export function mileMoment({ startedAt, endedAt }: TimedMile, now: number): MileMoment {
	if (!(now >= (endedAt ?? startedAt)) || (endedAt ?? now) < startedAt)
		return { kind: 'not-known' };
	const seconds = Math.floor(((endedAt ?? now) - startedAt) / 1000);
	if (seconds > limits.mileWalkMinutes.plausible.high * 60) return { kind: 'too-long' };
	if (endedAt === null) return { kind: 'going', seconds };
	const leftSeconds = Math.ceil(COUNT_SECONDS - (now - endedAt) / 1000);
	return leftSeconds > 0 ? { kind: 'count', leftSeconds } : { kind: 'done' };
}

/**
 * The time that an ended mile took, in whole seconds, half up.
 *
 * @example mileSeconds({ startedAt: 0, endedAt: 919_500 }) // 920
 */
export function mileSeconds({
	startedAt,
	endedAt
}: {
	startedAt: number;
	endedAt: number;
}): number {
	return Math.floor((endedAt - startedAt) / 1000 + 0.5);
}
