import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { localDate } from '$lib/screening/calendar.ts';

type Content = Extract<
	EntryContent,
	{ kind: 'pain' | 'pain-next-morning' | 'something-wrong' | 'ended' }
>;

/** What is said of an outing after it, as its next entry. Its own clock has stopped. */
export function entryAfter(entries: readonly Entry[], content: Content, nowMs: number): Entry {
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

/** The clock of an outing that stood for longer than any outing lasts: it was left. */
const LEFT_MS = 6 * 60 * 60 * 1000;

/**
 * What to write of an outing whose clock was stopped and which nobody came back to. Whoever said
 * that something felt wrong, and never said what, counts as having had a sign.
 */
export function entriesOfLeft(entries: readonly Entry[], nowMs: number): readonly Entry[] {
	if (!isOn(entries)) return [];
	const last = entries.findLast(({ kind }) =>
		['paused', 'resumed', 'halted', 'cooling-down'].includes(kind)
	);
	if (last?.kind !== 'paused' && last?.kind !== 'halted') return [];
	if (nowMs - last.at < LEFT_MS) return [];
	const wrong = { kind: 'something-wrong', sign: 'not-said' } as const;
	const signs = last.kind === 'halted' ? [entryAfter(entries, wrong, nowMs)] : [];
	return [...signs, entryAfter([...entries, ...signs], { kind: 'ended', how: 'early' }, nowMs)];
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
