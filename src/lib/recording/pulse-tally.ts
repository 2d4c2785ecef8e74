/** What a sensor has shown through a phase, so far. */
export interface PulseTally {
	readonly measuredMs: number;
	/** Beats a minute times milliseconds. */
	readonly area: number;
	readonly highestBpm: number;
	/** The last value and when, or null where there was none just now. */
	readonly last: { readonly atMs: number; readonly bpm: number } | null;
}

/** Of a phase, in contact. */
export interface PulseOfPhase {
	readonly meanBpm: number;
	readonly highestBpm: number;
	readonly measuredSeconds: number;
}

export const emptyTally: PulseTally = { measuredMs: 0, area: 0, highestBpm: 0, last: null };

/** A value stands for as long as this when the next one is late. Our own choice, no source. */
export const HOLDS_MS = 3000;

/**
 * The tally with one more value of the smoothed pulse. Each value stands until the next one comes,
 * three seconds at most; null, where there was no pulse to show, ends it and is counted nowhere.
 * Own rule. A clock that goes back adds nothing.
 *
 * @example tallied(tallied(emptyTally, 0, 120), 1000, 130).measuredMs // 1000
 */
export function tallied(tally: PulseTally, atMs: number, bpm: number | null): PulseTally {
	const { last } = tally;
	const heldMs = last === null ? 0 : Math.min(HOLDS_MS, Math.max(0, atMs - last.atMs));
	return {
		measuredMs: tally.measuredMs + heldMs,
		area: tally.area + heldMs * (last?.bpm ?? 0),
		highestBpm: Math.max(tally.highestBpm, bpm ?? 0),
		last: bpm === null ? null : { atMs, bpm }
	};
}

/**
 * Mean over the time in contact, highest, and that time; null where nothing was measured.
 * @example ofPhase(tallied(tallied(emptyTally, 0, 120), 1000, 130)) // { meanBpm: 120, highestBpm: 130, measuredSeconds: 1 }
 * @example ofPhase(emptyTally) // null
 */
export function ofPhase({ measuredMs, area, highestBpm }: PulseTally): PulseOfPhase | null {
	if (measuredMs === 0) return null;
	return { meanBpm: area / measuredMs, highestBpm, measuredSeconds: measuredMs / 1000 };
}
