import type { Entry } from '$lib/outing/entry.ts';

/** Where entries wait on this device. Each call is one whole step: after a kill it was or was not. */
export interface EntryStore {
	/** Oldest first, those that the server has not acknowledged. */
	waiting(): Promise<readonly Entry[]>;
	/** Forgets that these wait; an id that does not wait is no error. */
	settled(ids: readonly string[]): Promise<void>;
}

/** What the server answers: ids that are safe, and ids that it is no use to send again. */
export interface Acknowledged {
	readonly kept: readonly string[];
	readonly refused: readonly { readonly id: string; readonly code: string }[];
}

export interface Outcome {
	/** How many still wait. */
	readonly waiting: number;
	/** What the server will not take, for the page to say. */
	readonly refused: Acknowledged['refused'];
}

/** As many as the server takes at once, with room. */
export const SENT_AT_ONCE = 50;
const FIRST_WAIT_MS = 2000;
const LONGEST_WAIT_MS = 5 * 60 * 1000;

/**
 * Sends what waits, in order, until nothing does or the network fails. An entry is forgotten only
 * once the server has named it: an answer that was lost on the way means that it is sent again, and
 * the server keeps the same id once.
 */
export async function sendWaiting(
	store: EntryStore,
	send: (entries: readonly Entry[]) => Promise<Acknowledged>
): Promise<Outcome> {
	const refused: Acknowledged['refused'][number][] = [];
	for (;;) {
		const waiting = await store.waiting();
		const next = waiting.slice(0, SENT_AT_ONCE);
		if (next.length === 0) return { waiting: 0, refused };
		let told: Acknowledged;
		try {
			told = await send(next);
		} catch {
			return { waiting: waiting.length, refused };
		}
		const sent = new Set(next.map(({ id }) => id));
		const settled = [...told.kept, ...told.refused.map(({ id }) => id)].filter((id) =>
			sent.has(id)
		);
		// A server that names none of them would be asked for ever.
		if (settled.length === 0) return { waiting: waiting.length, refused };
		await store.settled(settled);
		refused.push(...told.refused.filter(({ id }) => sent.has(id)));
	}
}

/** How long to wait after so many failures in a row: twice as long each time, up to five minutes. */
export function waitMs(failures: number): number {
	return Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** Math.max(0, failures - 1));
}
