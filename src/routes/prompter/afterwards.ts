import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { leftOuting } from '$lib/outing/left-outing.ts';
import { localDate } from '$lib/screening/calendar.ts';

/** What may be said of an outing after its end. */
export type ContentAfter =
	| { readonly kind: 'halted' }
	| Extract<EntryContent, { kind: 'pain' | 'pain-next-morning' | 'something-wrong' | 'ended' }>;

/** What is said of an outing after it, as its next entry. Its own clock has stopped. */
export function entryAfter(entries: readonly Entry[], content: ContentAfter, nowMs: number): Entry {
	const last = entries.at(-1);
	if (last === undefined) throw new RangeError('entryAfter requires the entries of an outing');
	return {
		...content,
		id: crypto.randomUUID(),
		outingRunId: last.outingRunId,
		seq: Math.max(...entries.map(({ seq }) => seq)) + 1,
		at: nowMs,
		elapsedMs: Math.max(...entries.map(({ elapsedMs }) => elapsedMs))
	};
}

/** Whether an outing began and has not ended. */
export const isOn = (entries: readonly Entry[]): boolean =>
	entries.length > 0 && !entries.some(({ kind }) => kind === 'ended');

/** What is still to be written of an outing that was left with its clock standing, as its next entries. */
export function entriesOfLeft(entries: readonly Entry[], nowMs: number): readonly Entry[] {
	return leftOuting(entries, nowMs).reduce<readonly Entry[]>(
		(written, content) => [...written, entryAfter([...entries, ...written], content, nowMs)],
		[]
	);
}

/**
 * Whether it is a morning after the outing, and nobody asked yet about pain.
 * @param answered outing runs of which that was said elsewhere
 */
export function asksNextMorning(
	entries: readonly Entry[],
	nowMs: number,
	timeZone: string,
	answered: readonly string[] = []
): boolean {
	const ended = entries.find(({ kind }) => kind === 'ended');
	if (!ended || entries.some(({ kind }) => kind === 'pain-next-morning')) return false;
	if (answered.includes(ended.outingRunId)) return false;
	return localDate(ended.at, timeZone) < localDate(nowMs, timeZone);
}
