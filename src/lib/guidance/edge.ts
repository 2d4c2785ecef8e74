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

/**
 * The last effort that belongs to a goal, by our own words of the scale: whole sentences at 5, one
 * sentence and then a breath at 6, and from 7 on it says ease off. Our own, no source.
 */
const lastEffort: Readonly<Record<EdgeGoal, Effort>> = { comfortable: 5, 'with-breaths': 6 };

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
	/** Talk came with breaths: one stretch below it is where to be. */
	| { readonly kind: 'found'; readonly at: number }
	/** Talk was comfortable, at the last effort that belongs to the goal: one more would pass it. */
	| { readonly kind: 'stay'; readonly at: number }
	/** The effort is past the goal, whatever talk says: one stretch below it is where to be. */
	| { readonly kind: 'ease-off'; readonly at: number }
	/** Talk broke off, which nobody is asked for. */
	| { readonly kind: 'too-far'; readonly at: number }
	| { readonly kind: 'comfortable-throughout' };

/**
 * Talk first, effort second; of the two the one that asks for less decides. Nobody is led past the
 * goal: who is to stay comfortable goes up only from comfortable talk and an effort under 5.
 *
 * @param at index of the stretch that was just done
 * @throws RangeError for a stretch that the exercise does not have
 */
export function edgeStep(
	{ goal, stretches }: Pick<EdgeExercise, 'goal' | 'stretches'>,
	at: number,
	talk: TalkLevel,
	effort: Effort
): EdgeStep {
	if (stretches[at] === undefined) throw new RangeError('edgeStep requires a stretch of it');
	if (talk === 'broke-off') return { kind: 'too-far', at };
	if (effort > lastEffort[goal]) return { kind: 'ease-off', at };
	if (talk === 'with-breaths') return { kind: 'found', at };
	if (effort === lastEffort[goal]) return { kind: 'stay', at };
	return at + 1 < stretches.length
		? { kind: 'go-on', to: at + 1 }
		: { kind: 'comfortable-throughout' };
}
