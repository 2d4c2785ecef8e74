import type { Entry } from '$lib/outing/entry.ts';
import { forgetHere, keepHere, keptHere } from './on-this-phone.ts';

/** An entry on its way into the phone's database. */
export interface Jotted {
	readonly runnerKey: string;
	readonly entry: Entry;
}

const NAME = 'jotted';

/**
 * Notes entries before the database has them: this is over in the tap itself, and a reload in the
 * next moment, which cuts off a database that is still writing, leaves it there. Never throws.
 */
export function jot(runnerKey: string, entries: readonly Entry[]): void {
	keep([...jotted(), ...entries.map((entry) => ({ runnerKey, entry }))]);
}

/** What the database may not have yet, in the order in which it was noted. */
export function jotted(): readonly Jotted[] {
	return (keptHere(NAME) as readonly Jotted[] | null) ?? [];
}

/** The database has these. */
export function strike(ids: readonly string[]): void {
	keep(jotted().filter(({ entry }) => !ids.includes(entry.id)));
}

export function strikeAll(): void {
	forgetHere(NAME);
}

function keep(left: readonly Jotted[]): void {
	if (left.length === 0) strikeAll();
	else keepHere(NAME, left);
}
