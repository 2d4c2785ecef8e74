/** What may be said or sounded within a phase. */
export type CueKind =
	'phase-begins' | 'half-way' | 'one-minute-left' | 'three' | 'two' | 'one' | 'finished';

/**
 * From which length of a phase half-way and the last minute are worth a word, in seconds. Our own
 * choice: under that they would come so close to the beginning or the end that they only disturb.
 */
const HALF_WAY_FROM = 90;
const LAST_MINUTE_FROM = 150;
/** Two cues closer than this are one: the one that says more stays. */
const APART_SECONDS = 20;

/**
 * The cues within a phase of a length, in order, each with the milliseconds from its beginning.
 * The beginning itself belongs to whoever enters the phase.
 *
 * @param seconds the length of the phase, what was added included
 *
 * @example cuesWithin(60).map((cue) => cue.kind) // ['three', 'two', 'one']
 * @example cuesWithin(120)[0] // { kind: 'half-way', afterMs: 60000 }
 */
export function cuesWithin(
	seconds: number
): readonly { readonly kind: CueKind; readonly afterMs: number }[] {
	const half = seconds / 2;
	const hasLastMinute = seconds >= LAST_MINUTE_FROM;
	const isNearLastMinute = hasLastMinute && Math.abs(half - (seconds - 60)) < APART_SECONDS;
	return [
		...(seconds >= HALF_WAY_FROM && !isNearLastMinute
			? [{ kind: 'half-way' as const, afterMs: half * 1000 }]
			: []),
		...(hasLastMinute
			? [{ kind: 'one-minute-left' as const, afterMs: (seconds - 60) * 1000 }]
			: []),
		{ kind: 'three', afterMs: (seconds - 3) * 1000 },
		{ kind: 'two', afterMs: (seconds - 2) * 1000 },
		{ kind: 'one', afterMs: (seconds - 1) * 1000 }
	];
}
