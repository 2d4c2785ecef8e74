import { z } from 'zod';
import type { Entry } from '../outing/entry.ts';
import { checkEntry } from './entry.ts';

/** The most that is taken at once. An outing of an hour writes about a hundred entries. */
export const MOST_ENTRIES = 200;
export const MOST_BYTES = 400_000;

const envelope = z.object({
	runnerKey: z.string().max(80).optional(),
	entries: z.array(z.unknown()).max(MOST_ENTRIES)
});

export interface SentEntries {
	/** Who wrote them, as their phone knows it; null where it does not say. */
	readonly runnerKey: string | null;
	readonly entries: readonly Entry[];
	/** Ids, as far as they can be read, of what is no entry: sending it again will not help. */
	readonly refused: readonly string[];
}

/** What a phone sends, or null for what is none of it. */
export function readEntries(sent: unknown): SentEntries | null {
	const read = envelope.safeParse(sent);
	if (!read.success) return null;
	const checked = read.data.entries.map((one) => ({ one, entry: checkEntry(one) }));
	return {
		runnerKey: read.data.runnerKey ?? null,
		entries: checked.flatMap(({ entry }) => entry ?? []),
		refused: checked.flatMap(({ one, entry }) => (entry === null ? idOf(one) : []))
	};
}

function idOf(one: unknown): readonly string[] {
	const read = z.object({ id: z.string().max(80) }).safeParse(one);
	return read.success ? [read.data.id] : [];
}
