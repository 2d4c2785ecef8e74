/** Longer than anybody walks with a page. Our own choice, no source. */
const KEPT_MILLISECONDS = 3 * 60 * 60 * 1000;

/**
 * Keeps what was typed into a page in its own tab, so that a reload loses nothing. It ends with the
 * tab, or after three hours, and is given back only to the person who typed it.
 *
 * @param owner a word for the person, as the server says it
 */
export function keepInTab(name: string, owner: string, typed: unknown, now: number): void {
	try {
		sessionStorage.setItem(name, JSON.stringify({ owner, at: now, typed }));
	} catch {
		// A browser that keeps nothing: the page works without.
	}
}

/** @returns what was kept, not checked; null where there is none, or not for this person any more */
export function keptInTab(name: string, owner: string, now: number): unknown {
	try {
		const kept = JSON.parse(sessionStorage.getItem(name) ?? 'null') as Kept | null;
		if (kept?.owner === owner && Math.abs(now - kept.at) < KEPT_MILLISECONDS) return kept.typed;
	} catch {
		// Not ours to read, or not written by us.
	}
	forgetInTab(name);
	return null;
}

export function forgetInTab(name: string): void {
	try {
		sessionStorage.removeItem(name);
	} catch {
		// Nothing is kept there anyway.
	}
}

interface Kept {
	readonly owner: string;
	readonly at: number;
	readonly typed: unknown;
}
