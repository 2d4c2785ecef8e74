import type { OutingPhase } from './outing.ts';
import type { PhaseKind } from './phase.ts';
import type { Position } from './timeline.ts';

/** When a runner is asked to say something aloud, and how that was. It can always be missed. */
export interface TalkMoment {
	/** The place of the phase that is meant. */
	readonly phase: number;
	readonly kind: PhaseKind;
	/** The short line steers effort alone; the passage is about half a minute of speech. */
	readonly said: 'line' | 'passage';
	/** True while the passage is being read, before there is anything to answer. */
	readonly isReading: boolean;
}

/** Where effort is worth asking for. The first and the last walk are easy by design. */
const ASKED: ReadonlySet<PhaseKind> = new Set(['brisk-walk', 'steady-run', 'recovery-walk']);

/** How long before the end of a phase it is asked, at most; and how long after it. Our choice. */
const BEFORE_END_MS = 20_000;
const AFTER_END_MS = 40_000;

/** The pulse has caught up after about two minutes; the passage takes half a minute. */
export const PASSAGE_AFTER_MS = 120_000;
export const PASSAGE_MS = 30_000;
const PASSAGE_KINDS: ReadonlySet<PhaseKind> = new Set(['brisk-walk', 'steady-run']);
/** In a phase that goes on for this long after the passage the line is worth saying as well. */
const WORTH_BOTH_MS = 120_000;

/**
 * The phase in which the passage is read, once an outing: the first brisk walk or run of at least
 * two and a half minutes, or none.
 */
export function passagePhase(phases: readonly OutingPhase[]): number | null {
	const index = phases.findIndex(
		({ kind, seconds }) =>
			PASSAGE_KINDS.has(kind) && seconds * 1000 >= PASSAGE_AFTER_MS + PASSAGE_MS
	);
	return index === -1 ? null : index;
}

/** What is to be said now, near the end of a phase and for a while into the next; or nothing. */
export function talkMomentAt(position: Position): TalkMoment | null {
	if (position.state !== 'going') return null;
	const { index, phase, phases, before, inPhaseMs, leftMs } = position;
	const passage = passagePhase(phases) === index;
	if (passage && inPhaseMs >= PASSAGE_AFTER_MS) {
		const sinceMs = inPhaseMs - PASSAGE_AFTER_MS;
		if (sinceMs < PASSAGE_MS) return ofPassage(index, phase, true);
		if (!isWorthBoth(phase) || sinceMs < PASSAGE_MS + AFTER_END_MS) {
			return ofPassage(index, phase, false);
		}
	}
	const windowMs = Math.min(BEFORE_END_MS, (phase.seconds * 1000) / 3);
	if (ASKED.has(phase.kind) && leftMs <= windowMs) return ofLine(index, phase);
	if (before === null || before.how !== 'whole' || inPhaseMs >= AFTER_END_MS) return null;
	if (!ASKED.has(before.phase.kind)) return null;
	return passagePhase(phases) === before.index && !isWorthBoth(before.phase)
		? ofPassage(before.index, before.phase, false)
		: ofLine(before.index, before.phase);
}

const isWorthBoth = ({ seconds }: OutingPhase) =>
	seconds * 1000 >= PASSAGE_AFTER_MS + PASSAGE_MS + WORTH_BOTH_MS;

const ofLine = (phase: number, { kind }: OutingPhase): TalkMoment => ({
	phase,
	kind,
	said: 'line',
	isReading: false
});

const ofPassage = (phase: number, { kind }: OutingPhase, isReading: boolean): TalkMoment => ({
	phase,
	kind,
	said: 'passage',
	isReading
});
