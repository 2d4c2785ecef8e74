import type { DueEntry } from '$lib/outing/due-entries.ts';
import type { MeasuredPulse } from '$lib/outing/entry.ts';
import { emptyTally, ofPhase, tallied } from '$lib/recording/pulse-tally.ts';

/**
 * What a strap has shown since a phase was last over. Taps and counts are moments: they go with the
 * talk answers and are summed up nowhere. A reload forgets the phase that was on.
 */
export class PhasePulse {
	#tally = emptyTally;

	/** @param atMs by a clock that only goes forward */
	hear(pulse: MeasuredPulse | null, atMs: number) {
		const isStrap = pulse?.source === 'chest-strap';
		this.#tally = tallied(this.#tally, atMs, isStrap ? pulse.bpm : null);
	}

	/**
	 * What is due, and behind the first phase that is over its pulse. Of several at once, after a locked
	 * screen, the first is the one in which somebody still looked.
	 */
	withSummary(due: readonly DueEntry[], atMs: number): readonly DueEntry[] {
		const at = due.findIndex(({ kind }) => kind === 'phase-done');
		const done = due[at];
		if (done?.kind !== 'phase-done') return due;
		const last = this.#tally.last;
		const pulse = ofPhase(tallied(this.#tally, atMs, null));
		// A value that still stands is the first of the next phase.
		this.#tally = last === null ? emptyTally : tallied(emptyTally, atMs, last.bpm);
		if (pulse === null) return due;
		const summary: DueEntry = {
			kind: 'pulse-summary',
			phase: done.phase,
			source: 'chest-strap',
			...pulse,
			elapsedMs: done.elapsedMs
		};
		return [...due.slice(0, at + 1), summary, ...due.slice(at + 1)];
	}
}
