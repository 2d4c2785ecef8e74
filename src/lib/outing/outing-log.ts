/** How much a runner may add to a recovery at a time, in seconds. */
export const ADDED_SECONDS = 30;

/**
 * What happened in an outing, and how far the outing's own clock was, in milliseconds since the
 * start, pauses included. Entries are only ever added at the end. `phase` is the place of the phase
 * that was meant: a second tap that comes after its end does nothing to the next.
 */
export type LogEntry = { readonly atMs: number } & (
	| { readonly kind: 'paused' | 'resumed' }
	/** Something felt wrong: the clock stands until the runner says what it was. */
	| { readonly kind: 'halted' }
	| { readonly kind: 'skipped'; readonly phase: number }
	| { readonly kind: 'added'; readonly phase: number }
	/** To the walk that ends the outing, from wherever the runner is. */
	| { readonly kind: 'cooling-down' }
	| { readonly kind: 'ended' }
);

export type OutingLog = readonly LogEntry[];
