import type { OutingPhase } from './outing.ts';
import { ADDED_SECONDS, type LogEntry } from './outing-log.ts';
import { outingLimits } from './outing-limits.ts';
import { leavePhase, lengthMs, noteDone, type Walked } from './walked.ts';

/**
 * The walk that ends an outing which has none of its own left. Five to ten minutes of walking are
 * usual (from memory); six are the least that a plan of ours has.
 */
const COOL_DOWN: OutingPhase = {
	kind: 'cool-down-walk',
	seconds: 360,
	target: null,
	speedKmh: null,
	inclinePercent: null,
	cue: ''
};

/**
 * What an entry of the log does to an outing. An entry that no longer fits, such as a skip that was
 * tapped twice, does nothing: a log is what a thumb did, and never an error.
 */
export function applyEntry(walked: Walked, entry: LogEntry): void {
	if (walked.standing === 'over') return;
	switch (entry.kind) {
		case 'paused':
			if (walked.standing === 'going') walked.standing = 'paused';
			return;
		case 'halted':
			walked.standing = 'halted';
			return;
		case 'resumed':
			walked.standing = 'going';
			return;
		case 'skipped':
			if (entry.phase === walked.index) leavePhase(walked, 'skipped');
			return;
		case 'added':
			if (entry.phase === walked.index) add(walked);
			return;
		case 'cooling-down':
			coolDown(walked);
			return;
		case 'ended':
			if (walked.inPhaseMs > 0) noteDone(walked, 'cut-short');
			walked.standing = 'over';
	}
}

/** A recovery only: a run is never made longer on the way. */
function add(walked: Walked): void {
	if (walked.phases[walked.index]?.kind !== 'recovery-walk') return;
	const longer = lengthMs(walked) / 1000 + ADDED_SECONDS;
	if (longer <= outingLimits.phaseSeconds.high) walked.addedSeconds += ADDED_SECONDS;
}

/** To the outing's own last walk, or to one that is put in; from a walk that cools down, nowhere. */
function coolDown(walked: Walked): void {
	const { phases, index } = walked;
	if (phases[index]?.kind === 'cool-down-walk') return;
	const own = phases.findLast(({ kind }, place) => kind === 'cool-down-walk' && place > index);
	walked.phases = [...phases.slice(0, index + 1), own ?? COOL_DOWN];
	leavePhase(walked, 'cut-short');
}
