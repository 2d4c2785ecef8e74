import { applyEntry } from './apply-entry.ts';
import type { OutingPhase } from './outing.ts';
import type { OutingLog } from './outing-log.ts';
import { atTheStart, lengthMs, passTime, type Cue, type PhaseDone, type Walked } from './walked.ts';

/** Where a runner is in an outing. */
export type Position =
	| {
			readonly state: 'going' | 'paused' | 'halted';
			readonly index: number;
			readonly phase: OutingPhase;
			/** Pauses left out. */
			readonly inPhaseMs: number;
			readonly phaseMs: number;
			readonly leftMs: number;
			readonly next: OutingPhase | null;
			/** The phase before, once it is behind. */
			readonly before: PhaseDone | null;
			/** To the end of the outing. */
			readonly outingLeftMs: number;
			readonly phases: readonly OutingPhase[];
	  }
	| { readonly state: 'over'; readonly phases: readonly OutingPhase[] };

/**
 * Where am I? Worked out each time from the outing and its log, never counted by ticks: so it is
 * right after a locked screen, a sleep, a reload or a crash.
 *
 * @param nowMs milliseconds on the outing's clock (see outing-clock.ts)
 * @throws RangeError when the clock is not a number from 0
 */
export function positionAt(
	phases: readonly OutingPhase[],
	log: OutingLog,
	nowMs: number
): Position {
	const walked = walk(phases, log, nowMs);
	const { index, inPhaseMs } = walked;
	const phase = walked.phases[index];
	if (walked.standing === 'over' || phase === undefined) {
		return { state: 'over', phases: walked.phases };
	}
	const phaseMs = lengthMs(walked);
	const later = walked.phases.slice(index + 1);
	return {
		state: walked.standing,
		index,
		phase,
		inPhaseMs,
		phaseMs,
		leftMs: phaseMs - inPhaseMs,
		next: later[0] ?? null,
		before: walked.done.at(-1) ?? null,
		outingLeftMs: phaseMs - inPhaseMs + later.reduce((sum, { seconds }) => sum + seconds * 1000, 0),
		phases: walked.phases
	};
}

/** Where on its clock an outing ends if nothing more is done: never, while that clock stands. */
export const endsAt = (position: Position, nowMs: number): number =>
	position.state === 'going' ? nowMs + position.outingLeftMs : Number.POSITIVE_INFINITY;

/**
 * The cues that fell due since the last look. However often or seldom one looks, every cue comes
 * once.
 *
 * @param sinceMs the last look; null where there was none, so that the first phase is announced
 */
export function cuesSince(
	phases: readonly OutingPhase[],
	log: OutingLog,
	sinceMs: number | null,
	nowMs: number
): readonly Cue[] {
	return walk(phases, log, nowMs).cues.filter(({ atMs }) => sinceMs === null || atMs > sinceMs);
}

/** Every cue still to come, if nothing else happens: what a sound track of the outing holds. */
export function cuesAhead(
	phases: readonly OutingPhase[],
	log: OutingLog,
	nowMs: number
): readonly Cue[] {
	return cuesSince(phases, log, nowMs, Number.POSITIVE_INFINITY);
}

/** The phases that are behind, the one that was broken off included. */
export function phasesDone(
	phases: readonly OutingPhase[],
	log: OutingLog,
	nowMs: number
): readonly PhaseDone[] {
	return walk(phases, log, nowMs).done;
}

function walk(phases: readonly OutingPhase[], log: OutingLog, nowMs: number): Walked {
	if (!(nowMs >= 0)) throw new RangeError('an outing requires a clock from 0 upwards');
	const walked = atTheStart(phases);
	for (const entry of log) {
		if (entry.atMs > nowMs) break;
		passTime(walked, entry.atMs);
		applyEntry(walked, entry);
	}
	passTime(walked, nowMs);
	return walked;
}
