import type { OutingPhase } from './outing.ts';
import { cuesWithin, type CueKind } from './phase-cues.ts';

/** A cue, the place of its phase, and when it falls due on the outing's clock. */
export interface Cue {
	readonly kind: CueKind;
	readonly phase: number;
	readonly atMs: number;
}

/** How a phase went. Times on the outing's clock, pauses among them. */
export interface PhaseDone {
	readonly phase: OutingPhase;
	readonly index: number;
	readonly startedAtMs: number;
	readonly endedAtMs: number;
	/** Pauses left out. */
	readonly activeMs: number;
	readonly addedSeconds: number;
	readonly how: 'whole' | 'skipped' | 'cut-short';
}

/** An outing on its way: what is changed while one goes through its log. */
export interface Walked {
	clockMs: number;
	phases: readonly OutingPhase[];
	/** The phase that is on; the number of phases where the outing is over. */
	index: number;
	/** Time in the phase, pauses left out. */
	inPhaseMs: number;
	phaseStartedAtMs: number;
	addedSeconds: number;
	standing: 'going' | 'paused' | 'halted' | 'over';
	readonly cues: Cue[];
	readonly done: PhaseDone[];
}

export function atTheStart(phases: readonly OutingPhase[]): Walked {
	const isEmpty = phases.length === 0;
	return {
		clockMs: 0,
		phases,
		index: 0,
		inPhaseMs: 0,
		phaseStartedAtMs: 0,
		addedSeconds: 0,
		standing: isEmpty ? 'over' : 'going',
		cues: isEmpty ? [] : [{ kind: 'phase-begins', phase: 0, atMs: 0 }],
		done: []
	};
}

export const lengthMs = ({ phases, index, addedSeconds }: Walked) =>
	((phases[index]?.seconds ?? 0) + addedSeconds) * 1000;

/** Lets time pass, and notes the cues that fall due. While the clock stands nothing does. */
export function passTime(walked: Walked, toMs: number): void {
	while (walked.standing === 'going' && walked.clockMs < toMs) {
		const leftMs = lengthMs(walked) - walked.inPhaseMs;
		const stepMs = Math.min(leftMs, toMs - walked.clockMs);
		noteCues(walked, walked.inPhaseMs + stepMs);
		walked.inPhaseMs += stepMs;
		walked.clockMs += stepMs;
		if (stepMs === leftMs) leavePhase(walked, 'whole');
	}
	walked.clockMs = Math.max(walked.clockMs, toMs);
}

/** Ends the phase that is on, and begins the next where there is one. */
export function leavePhase(walked: Walked, how: PhaseDone['how']): void {
	noteDone(walked, how);
	walked.index += 1;
	walked.inPhaseMs = 0;
	walked.addedSeconds = 0;
	walked.phaseStartedAtMs = walked.clockMs;
	const isOver = walked.index >= walked.phases.length;
	if (isOver) walked.standing = 'over';
	walked.cues.push({
		kind: isOver ? 'finished' : 'phase-begins',
		phase: walked.index,
		atMs: walked.clockMs
	});
}

export function noteDone(walked: Walked, how: PhaseDone['how']): void {
	const phase = walked.phases[walked.index];
	if (phase === undefined) return;
	walked.done.push({
		phase,
		index: walked.index,
		startedAtMs: walked.phaseStartedAtMs,
		endedAtMs: walked.clockMs,
		activeMs: walked.inPhaseMs,
		addedSeconds: walked.addedSeconds,
		how
	});
}

function noteCues(walked: Walked, untilInPhaseMs: number): void {
	for (const { kind, afterMs } of cuesWithin(lengthMs(walked) / 1000)) {
		if (afterMs <= walked.inPhaseMs || afterMs > untilInPhaseMs) continue;
		// A recovery that was made longer has only one middle.
		if (kind === 'half-way' && walked.cues.some(isMiddleOf(walked.index))) continue;
		const atMs = walked.clockMs + afterMs - walked.inPhaseMs;
		walked.cues.push({ kind, phase: walked.index, atMs });
	}
}

const isMiddleOf = (index: number) => (cue: Cue) => cue.kind === 'half-way' && cue.phase === index;
