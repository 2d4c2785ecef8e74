import { effortOff } from '$lib/guidance/guess.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import type { Effort, TalkLevel } from '$lib/physiology/effort-scale.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';

/** A guess as it is kept. */
export interface Guess {
	readonly id: string;
	readonly guessedAt: number;
	readonly on: string;
	readonly phase: PhaseKind;
	readonly effort: Effort;
	readonly pulseBpm: number | null;
	readonly seen: { readonly talk: TalkLevel; readonly pulseBpm: number | null } | null;
	/** Of the outing in which it was made; left out for one that was made on this page. */
	readonly outingId?: string;
}

/** A guess that was looked at, as it is shown. Without a pulse there is none in it. */
export interface GuessView {
	readonly id: string;
	/** It goes with that outing; null for one that can be removed here. */
	readonly outingId: string | null;
	readonly on: string;
	readonly phase: PhaseKind;
	readonly effort: number;
	readonly talk: TalkLevel;
	/** Steps off what talk said. */
	readonly effortOff: number;
	readonly pulse: {
		readonly guessedBpm: number;
		readonly seenBpm: number;
		/** Beats; below zero was too low. */
		readonly off: number;
	} | null;
}

/** @param showsPulse false where pulse is off: then no beat leaves the server */
export function guessView(guess: Guess, showsPulse: boolean): GuessView | null {
	const { id, outingId = null, on, phase, effort, pulseBpm, seen } = guess;
	if (seen === null) return null;
	const seenBpm = showsPulse && seen.pulseBpm !== null ? roundHalfUp(seen.pulseBpm, 0) : null;
	return {
		id,
		outingId,
		on,
		phase,
		effort,
		talk: seen.talk,
		effortOff: effortOff(effort, seen.talk),
		pulse:
			seenBpm === null || pulseBpm === null
				? null
				: { guessedBpm: pulseBpm, seenBpm, off: pulseBpm - seenBpm }
	};
}
