import type { Effort, TalkLevel } from '../physiology/effort-scale.ts';
import type { Guidance } from './guide.ts';

/** How far the exercise goes: breaks in talk are described, never looked for. */
export type EdgeGoal = 'comfortable' | 'with-breaths';

export type EdgeStretch = 'easy-walk' | 'brisk-walk' | 'faster-walk' | 'fastest-walk' | 'slow-run';

export interface EdgeExercise {
	readonly goal: EdgeGoal;
	/** Easiest first. */
	readonly stretches: readonly EdgeStretch[];
	/** The pulse over which nobody goes up a step, not rounded; null where no pulse is shown. */
	readonly highestBpm: number | null;
}

/**
 * Each stretch, in seconds: talk takes over two minutes at one effort to turn (foster2008), and half
 * a minute of it is read aloud.
 */
export const EDGE_STRETCH_SECONDS = 150;
export const READ_FROM_SECONDS = 120;

/** From here on the scale says ease off. */
const EASE_OFF: Effort = 7;

/**
 * Short stretches from comfortable to the edge of it. Whoever may walk only, or is settling in, stays
 * comfortable. Only who is used to regular exercise ends with a slow run: for the others runs of two
 * minutes come much later than their first. Steps and who gets which are our own caution, no source.
 */
export function edgeExercise(guidance: Extract<Guidance, { open: true }>): EdgeExercise {
	const { mayRun, settlingIn, phases } = guidance;
	const isFree = mayRun && settlingIn.kind !== 'going-on';
	const isUsedToIt = mayRun && settlingIn.kind === 'not-needed';
	const hardest = phases.find(({ kind }) => kind === 'steady-run' || kind === 'brisk-walk');
	return {
		goal: isFree ? 'with-breaths' : 'comfortable',
		stretches: ['easy-walk', 'brisk-walk', 'faster-walk', isUsedToIt ? 'slow-run' : 'fastest-walk'],
		highestBpm: hardest?.pulse?.high.bpm ?? null
	};
}

/** What a stretch led to. */
export type EdgeStep =
	| { readonly kind: 'go-on'; readonly to: number }
	/** The stretch at which the edge was met; one below it is where to be. */
	| { readonly kind: 'found'; readonly at: number }
	/** Talk was comfortable and the effort was not: it counts second, and ends it too. */
	| { readonly kind: 'ease-off'; readonly at: number }
	/** Talk broke off, which nobody is asked for. */
	| { readonly kind: 'too-far'; readonly at: number }
	| { readonly kind: 'comfortable-throughout' };

/**
 * Talk first, effort second. Whatever the goal is, nobody is sent past "with breaths".
 *
 * @param at index of the stretch that was just done
 * @throws RangeError for a stretch that the exercise does not have
 */
export function edgeStep(
	{ stretches }: Pick<EdgeExercise, 'stretches'>,
	at: number,
	talk: TalkLevel,
	effort: Effort
): EdgeStep {
	if (stretches[at] === undefined) throw new RangeError('edgeStep requires a stretch of it');
	switch (talk) {
		case 'broke-off':
			return { kind: 'too-far', at };
		case 'with-breaths':
			return { kind: 'found', at };
		case 'comfortable':
			if (effort >= EASE_OFF) return { kind: 'ease-off', at };
			return at + 1 < stretches.length
				? { kind: 'go-on', to: at + 1 }
				: { kind: 'comfortable-throughout' };
	}
}
