import type { Entry } from './entry.ts';

/**
 * Entries from anywhere as one list: each id once, in the order in which they were written. Sent
 * twice, or in another order, or by two devices, the list is the same.
 *
 * Order: number in the run, then the device's clock, then the id. Should one id ever come with two
 * contents, the one that is first as text counts, whichever came first.
 *
 * @example mergeEntries([], []).length // 0
 */
export function mergeEntries(...sets: readonly (readonly Entry[])[]): readonly Entry[] {
	const byId = new Map<string, Entry>();
	for (const entry of sets.flat()) {
		const known = byId.get(entry.id);
		if (known === undefined || asText(entry) < asText(known)) byId.set(entry.id, entry);
	}
	return [...byId.values()].sort(inOrder);
}

function inOrder(one: Entry, other: Entry): number {
	return one.seq - other.seq || one.at - other.at || (one.id < other.id ? -1 : 1);
}

/** Keys in order, so that two devices write the same. */
function asText(entry: Entry): string {
	const keys = new Set<string>();
	JSON.stringify(entry, (key, value: unknown) => (keys.add(key), value));
	return JSON.stringify(entry, [...keys].sort());
}
