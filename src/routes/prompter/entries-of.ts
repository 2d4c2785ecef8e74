import type { DueEntry } from '$lib/outing/due-entries.ts';
import type { Entry } from '$lib/outing/entry.ts';

/** What is due, as the next entries of an outing run whose clock says now. */
export function entriesOf(
	due: readonly DueEntry[],
	outingRunId: string,
	{ entries, nowMs }: { readonly entries: readonly Entry[]; readonly nowMs: number }
): readonly Entry[] {
	const next = Math.max(-1, ...entries.map(({ seq }) => seq)) + 1;
	return due.map((one, i) => ({
		...one,
		id: crypto.randomUUID(),
		outingRunId,
		seq: next + i,
		// What happened while nobody looked gets the time when it happened.
		at: Math.max(0, Math.round(Date.now() - (nowMs - one.elapsedMs)))
	}));
}
