import type { PhaseKind } from './phase.ts';

/** One phase of an outing as its author wrote it. What is null is each runner's own. */
export interface OutingPhase {
	readonly kind: PhaseKind;
	/** Whole seconds, within outingLimits.phaseSeconds. */
	readonly seconds: number;
	/** Fractions of heart-rate reserve; narrower than the kind's own target. */
	readonly target: { readonly low: number; readonly high: number } | null;
	readonly speedKmh: number | null;
	readonly inclinePercent: number | null;
	/** In the coach's words, shown and spoken as the phase begins; empty where there is none. */
	readonly cue: string;
}

/** Phases that are done several times over, in this order. */
export interface RepeatedPhases {
	readonly times: number;
	readonly phases: readonly OutingPhase[];
}

export type OutingPart = OutingPhase | RepeatedPhases;

/** One exercise session, before anybody has done it. */
export interface Outing {
	readonly name: string;
	readonly parts: readonly OutingPart[];
}

export function isRepeated(part: OutingPart): part is RepeatedPhases {
	return 'times' in part;
}

/** Every phase in the order in which it is met, repeats written out. */
export function phasesOf({ parts }: Pick<Outing, 'parts'>): readonly OutingPhase[] {
	return parts.flatMap((part) =>
		isRepeated(part) ? Array.from({ length: part.times }, () => part.phases).flat() : [part]
	);
}
