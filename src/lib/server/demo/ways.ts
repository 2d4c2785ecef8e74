import type { Effort, TalkLevel } from '../../physiology/effort-scale.ts';
import type { MeasuredPulse } from '../../outing/entry.ts';
import type { PhaseKind } from '../../outing/phase.ts';
import type { DemoRunnerId } from './people.ts';

/** How one of the made-up runners goes. Nothing of it is about anybody real. */
export interface Way {
	/** How the pulse is taken; null for who takes none, and for whom it is off. */
	readonly pulse: MeasuredPulse['source'] | null;
	readonly walkKmh: number;
	readonly runKmh: number;
	/** Where the pulse would settle, as shares of the reserve. */
	readonly shares: Readonly<Record<PhaseKind, number>>;
	/** What a run, or a brisk walk, feels like. */
	readonly effort: Effort;
	readonly effortAtMost: Effort;
	/** On the first days with runs, before the coach set a band: too fast. */
	readonly atFirst: { readonly talk: TalkLevel; readonly effort: Effort } | null;
	/** Of the twelve days, the one after which a shin hurts, and the one before which it is gone. */
	readonly sore: { readonly after: number; readonly goneBy: number } | null;
}

const easy: Way = {
	pulse: null,
	walkKmh: 5,
	runKmh: 6,
	shares: {
		'warm-up-walk': 0.32,
		'brisk-walk': 0.47,
		'steady-run': 0.72,
		'recovery-walk': 0.36,
		'cool-down-walk': 0.26
	},
	effort: 5,
	effortAtMost: 6,
	atFirst: null,
	sore: null
};

/** Whoever asks first goes nowhere. */
export const ways: Readonly<Record<Exclude<DemoRunnerId, 'gwen'>, Way>> = {
	dagny: { ...easy, walkKmh: 4.4 },
	ines: { ...easy, pulse: 'counted', walkKmh: 5.2 },
	'mei-lin': {
		...easy,
		pulse: 'chest-strap',
		walkKmh: 5.6,
		runKmh: 7,
		atFirst: { talk: 'with-breaths', effort: 7 }
	},
	pavel: {
		...easy,
		pulse: 'tapped',
		walkKmh: 5.8,
		runKmh: 7.4,
		shares: { ...easy.shares, 'brisk-walk': 0.42, 'steady-run': 0.66 },
		sore: { after: 8, goneBy: 11 }
	},
	rashid: { ...easy, walkKmh: 5.2 },
	tobias: { ...easy, pulse: 'counted', walkKmh: 4.8 }
};
