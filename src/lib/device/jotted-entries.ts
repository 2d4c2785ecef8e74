import type { Entry } from '$lib/outing/entry.ts';

/** An entry on its way into the phone's database. */
export interface Jotted {
	readonly runnerKey: string;
	readonly entry: Entry;
}

const NAME = 'breathmark-jotted';

/**
 * Notes entries before the database has them: this is over in the tap itself, and a reload in the
 * next moment, which cuts off a database that is still writing, leaves it there. Never throws.
 */
export function jot(runnerKey: string, entries: readonly Entry[]): void {
	keep([...jotted(), ...entries.map((entry) => ({ runnerKey, entry }))]);
}

/** What the database may not have yet, in the order in which it was noted. */
export function jotted(): readonly Jotted[] {
	try {
		return JSON.parse(localStorage.getItem(NAME) ?? '[]') as Jotted[];
	} catch {
		return [];
	}
}

/** The database has these. */
export function strike(ids: readonly string[]): void {
	keep(jotted().filter(({ entry }) => !ids.includes(entry.id)));
}

export function strikeAll(): void {
	keep([]);
}

function keep(left: readonly Jotted[]): void {
	try {
		if (left.length === 0) localStorage.removeItem(NAME);
		else localStorage.setItem(NAME, JSON.stringify(left));
	} catch {
		// A browser that keeps nothing here still has its database.
	}
}
