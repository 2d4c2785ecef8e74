import type { Acting, Person, World } from './people.ts';

type Call = (who: Acting, to: World) => unknown;

interface More {
	/** What happens before anybody asks. */
	readonly first?: (to: World) => unknown;
	/** What those are answered who may, where nothing in it tells whose it is. */
	readonly gets?: unknown;
	/** A refusal of its own kind for some. */
	readonly but?: Partial<Record<Person, unknown>>;
	/** Who is asked at all: some functions make sense for a coach alone. */
	readonly among?: readonly Person[];
}

/** One line of the table: a function, for whom it is, and what everybody else is answered. */
export interface Row extends More {
	/** File and function; what tells two lines of the same function apart follows a colon. */
	readonly name: string;
	/** They read something that is Ines's or Odile's, or change it. */
	readonly open: readonly Person[];
	readonly shut: unknown;
	readonly call: Call;
}

/** For `shut`: whoever asks acts for themselves; nothing of Ines's or Odile's is in the answer. */
export const NOTHING_OF_THEIRS = Symbol('nothing of theirs');

export const everyCoach: readonly Person[] = ['owner', 'helper', 'otherCoach', 'host'];

export const onlyFor = (
	name: string,
	open: readonly Person[],
	shut: unknown,
	call: Call,
	more: More = {}
): Row => ({ name, open, shut, call, ...more });

const rowFor =
	(open: readonly Person[]) =>
	(name: string, shut: unknown, call: Call, more: More = {}): Row =>
		onlyFor(name, open, shut, call, more);

/** Every coach of the group, a helper too. */
export const leads = rowFor(['owner', 'helper']);
/** Owners of the group alone. */
export const decides = rowFor(['owner']);
/** The runner alone. */
export const own = rowFor(['runner']);
