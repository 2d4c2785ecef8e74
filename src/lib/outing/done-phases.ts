import type { MeasuredPulse, TalkAnswer } from './entry.ts';
import { phasesOf } from './outing.ts';
import type { PhaseKind } from './phase.ts';
import type { DoneOuting } from './settle-entries.ts';

/** All that was written down about one phase. */
export interface DonePhase {
	/** Place of the phase, from 0, repeats written out. */
	readonly phase: number;
	/** Null where the start of the outing never arrived. */
	readonly kind: PhaseKind | null;
	/** Pauses left out. Null where only answers arrived. */
	readonly activeSeconds: number | null;
	readonly how: 'whole' | 'skipped' | 'cut-short' | null;
	readonly answers: readonly TalkAnswer[];
	readonly pulse: {
		readonly source: MeasuredPulse['source'];
		readonly meanBpm: number;
		readonly highestBpm: number;
		readonly measuredSeconds: number;
	} | null;
}

/**
 * An outing that was done, phase by phase in order. A phase beyond those that were planned is a
 * cool-down walk that was put in on the way.
 */
export function donePhases({
	started,
	phases,
	answers,
	pulses
}: Pick<DoneOuting, 'started' | 'phases' | 'answers' | 'pulses'>): readonly DonePhase[] {
	const planned = started && phasesOf(started.outing);
	const places = new Set([...phases, ...answers, ...pulses].map(({ phase }) => phase));
	return [...places]
		.sort((one, other) => one - other)
		.map((phase) => {
			const done = phases.find((one) => one.phase === phase);
			const pulse = pulses.find((one) => one.phase === phase);
			return {
				phase,
				kind: planned && (planned[phase]?.kind ?? 'cool-down-walk'),
				activeSeconds: done?.activeSeconds ?? null,
				how: done?.how ?? null,
				answers: answers.filter((one) => one.phase === phase),
				pulse: pulse ?? null
			};
		});
}
