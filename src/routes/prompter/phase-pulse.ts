import type { PulseSoFar } from '$lib/device/phone-database.ts';
import type { DueEntry } from '$lib/outing/due-entries.ts';
import type { MeasuredPulse } from '$lib/outing/entry.ts';
import type { OutingPhase } from '$lib/outing/outing.ts';
import { placeInPlan } from '$lib/outing/place-in-plan.ts';
import type { Position } from '$lib/outing/timeline.ts';
import { emptyTally, ofPhase, tallied } from '$lib/recording/pulse-tally.ts';

/**
 * What a strap shows in each phase. Taps and counts are moments: they go with the talk answers and
 * are summed up nowhere. After a locked screen what was heard is of the phase in which somebody
 * still looked.
 */
export class PhasePulse {
	#phase: number | null = null;
	#tally = emptyTally;

	/** @param kept what was kept before the page was loaded again; the time between adds nothing */
	constructor(kept: PulseSoFar | null) {
		if (kept === null) return;
		this.#phase = kept.phase;
		this.#tally = { ...kept.tally, last: null };
	}

	/** To keep, in case the page is loaded again. Null while nothing was measured. */
	get soFar(): PulseSoFar | null {
		const isEmpty = this.#tally.measuredMs === 0;
		return this.#phase === null || isEmpty ? null : { phase: this.#phase, tally: this.#tally };
	}

	/** @param atMs by a clock that only goes forward */
	hear(pulse: MeasuredPulse | null, atMs: number) {
		const isStrap = pulse?.source === 'chest-strap';
		this.#tally = tallied(this.#tally, atMs, isStrap ? pulse.bpm : null);
	}

	/**
	 * Looks which phase is on.
	 * @returns what to write down of the phase that is over, where there is anything
	 */
	look(
		planned: readonly OutingPhase[],
		position: Position,
		nowMs: number,
		atMs = performance.now()
	): readonly DueEntry[] {
		const phase = placeOf(planned, position);
		if (phase === this.#phase) return [];
		const [left, { last }] = [this.#phase, this.#tally];
		const pulse = ofPhase(tallied(this.#tally, atMs, null));
		this.#phase = phase;
		// A value that still stands is the first of the next phase.
		this.#tally = last === null ? emptyTally : tallied(emptyTally, atMs, last.bpm);
		if (left === null || pulse === null) return [];
		const of = { kind: 'pulse-summary', phase: left, source: 'chest-strap' } as const;
		return [{ ...of, ...pulse, elapsedMs: nowMs }];
	}

	/** Once pulse numbers are off: none may be written down. */
	forget() {
		this.#tally = emptyTally;
	}
}

function placeOf(planned: readonly OutingPhase[], position: Position): number | null {
	if (position.state === 'over') return null;
	return placeInPlan(planned, position.phase, position.index);
}
