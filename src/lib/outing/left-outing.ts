import type { Entry, EntryContent } from './entry.ts';
import { logOfEntries } from './log-of-entries.ts';
import { mergeEntries } from './merge-entries.ts';
import { phasesOf } from './outing.ts';
import { positionAt } from './timeline.ts';

/** A clock that stood for longer than any outing lasts: whoever stopped it has left. Our own choice. */
const LEFT_MS = 6 * 60 * 60 * 1000;

/** Whether somebody said that something felt wrong, in an outing or after it, and not yet what. */
export function isWrongUntold(entries: readonly Entry[]): boolean {
	const told = mergeEntries(entries).findLast(
		({ kind }) => kind === 'halted' || kind === 'something-wrong'
	);
	return told?.kind === 'halted';
}

/**
 * What is to be written of an outing whose clock stands, and which nobody came back to for six hours:
 * that it ended. Whoever said that something felt wrong, and never said what, counts as having had a
 * sign, after the end of an outing as well.
 *
 * @param nowMs epoch milliseconds, by the device's clock
 */
export function leftOuting(
	entries: readonly Entry[],
	nowMs: number
): readonly Extract<EntryContent, { kind: 'something-wrong' | 'ended' }>[] {
	const started = entries.find((one) => one.kind === 'started');
	if (started?.kind !== 'started') return [];
	const lastSeenMs = Math.max(...entries.map(({ at }) => at));
	if (nowMs - lastSeenMs < LEFT_MS) return [];
	const elapsedMs = Math.max(...entries.map((one) => one.elapsedMs));
	const planned = phasesOf(started.outing);
	const { state } = positionAt(planned, logOfEntries(entries), elapsedMs);
	if (state === 'going') return [];
	const signs = isWrongUntold(entries)
		? [{ kind: 'something-wrong', sign: 'not-said' } as const]
		: [];
	return state === 'over' ? signs : [...signs, { kind: 'ended', how: 'early' }];
}
