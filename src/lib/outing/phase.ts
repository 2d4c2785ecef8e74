import type { Gait } from '../physiology/metabolic-cost.ts';

export type PhaseKind =
	'warm-up-walk' | 'brisk-walk' | 'steady-run' | 'recovery-walk' | 'cool-down-walk';

export type TalkTarget = 'comfortable' | 'comfortable-then-with-breaths' | 'comfortable-by-the-end';

/** What a phase asks of a runner, before screening or a coach narrows it. */
export interface PhaseTarget {
	readonly kind: PhaseKind;
	readonly gait: Gait;
	/** Fractions of heart-rate reserve. A null low edge means "anything under". */
	readonly reserve: { readonly low: number | null; readonly high: number };
	/** True where the band is to be reached by the end of the phase, not all through it. */
	readonly byItsEnd: boolean;
	/** Effort 0 to 10. */
	readonly effort: { readonly low: number; readonly high: number };
	readonly talk: TalkTarget;
	/** A usual length in seconds, for a page that has no outing at hand. */
	readonly usualSeconds: { readonly low: number; readonly high: number };
}

/**
 * The targets of every phase. Steady run 50 to 62 % of reserve is our own choice: sedentary adults
 * in Foster 2009 talked comfortably at 73 % of their maximum (53 to 60 % of reserve by age) and
 * were nearly unsure at 79 %. Brisk walk is moderate by Garber 2011, 40 to 59 % of reserve.
 * Lengths are common practice, no source.
 */
export const phaseTargets: Readonly<Record<PhaseKind, PhaseTarget>> = {
	'warm-up-walk': {
		kind: 'warm-up-walk',
		gait: 'walk',
		reserve: { low: 0.3, high: 0.45 },
		byItsEnd: false,
		effort: { low: 3, high: 4 },
		talk: 'comfortable',
		usualSeconds: { low: 360, high: 480 }
	},
	'brisk-walk': {
		kind: 'brisk-walk',
		gait: 'walk',
		reserve: { low: 0.4, high: 0.59 },
		byItsEnd: false,
		effort: { low: 5, high: 6 },
		talk: 'comfortable',
		usualSeconds: { low: 600, high: 1200 }
	},
	'steady-run': {
		kind: 'steady-run',
		gait: 'run',
		reserve: { low: 0.5, high: 0.62 },
		byItsEnd: false,
		effort: { low: 5, high: 6 },
		talk: 'comfortable-then-with-breaths',
		usualSeconds: { low: 20, high: 30 }
	},
	'recovery-walk': {
		kind: 'recovery-walk',
		gait: 'walk',
		reserve: { low: 0.35, high: 0.5 },
		byItsEnd: true,
		effort: { low: 3, high: 5 },
		talk: 'comfortable-by-the-end',
		usualSeconds: { low: 90, high: 150 }
	},
	'cool-down-walk': {
		kind: 'cool-down-walk',
		gait: 'walk',
		reserve: { low: null, high: 0.4 },
		byItsEnd: true,
		effort: { low: 1, high: 3 },
		talk: 'comfortable',
		usualSeconds: { low: 360, high: 480 }
	}
};

export const phaseKinds = Object.keys(phaseTargets) as readonly PhaseKind[];

/** The phases of an outing with runs, in the order in which they are met. */
export const runningPhases: readonly PhaseKind[] = [
	'warm-up-walk',
	'steady-run',
	'recovery-walk',
	'cool-down-walk'
];

/** The phases of an outing without runs: every run becomes a brisk walk. */
export const walkingPhases: readonly PhaseKind[] = ['warm-up-walk', 'brisk-walk', 'cool-down-walk'];
