import type { Entry } from './entry.ts';
import { mergeEntries } from './merge-entries.ts';
import type { LogEntry, OutingLog } from './outing-log.ts';

/**
 * What the entries of one outing run did to its clock, in the order of that clock. Answers, pain and
 * pulses do nothing to it.
 *
 * @example logOfEntries([]) // []
 */
export function logOfEntries(entries: readonly Entry[]): OutingLog {
	return mergeEntries(entries)
		.flatMap(logged)
		.sort((one, other) => one.atMs - other.atMs);
}

function logged(entry: Entry): readonly LogEntry[] {
	const atMs = entry.elapsedMs;
	switch (entry.kind) {
		case 'paused':
		case 'resumed':
		case 'halted':
		case 'cooling-down':
		case 'ended':
			return [{ kind: entry.kind, atMs }];
		case 'skipped':
			return [{ kind: 'skipped', phase: entry.phase, atMs }];
		case 'added-seconds':
			return [{ kind: 'added', phase: entry.phase, atMs }];
		case 'started':
		case 'talk-answer':
		case 'phase-done':
		case 'pain':
		case 'pain-next-morning':
		case 'something-wrong':
		case 'pulse-summary':
			return [];
	}
}
