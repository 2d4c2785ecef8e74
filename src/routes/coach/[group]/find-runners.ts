import {
	rosterStateWords,
	type RosterState,
	type RosterStateWord
} from '$lib/guidance/roster-next.ts';

/** Whom a coach looks for on the roster: part of a name, a word beside it, or both. */
export interface Asked {
	readonly name: string;
	/** Null for every word. */
	readonly word: RosterStateWord | null;
}

export const EVERYBODY: Asked = { name: '', word: null };

/** As long as a name on the list may be. */
export const LONGEST_SEARCH = 60;

/** What was sent. Whatever cannot be understood looks for everybody. */
export function askedIn(sent: FormData): Asked {
	const name = sent.get('name');
	return {
		name: typeof name === 'string' ? name.slice(0, LONGEST_SEARCH) : '',
		word: wordIn(sent.get('word'))
	};
}

export const wordIn = (sent: unknown): RosterStateWord | null =>
	rosterStateWords.find((word) => word === sent) ?? null;

export const isEverybody = ({ name, word }: Asked) => name.trim() === '' && word === null;

interface OnRoster {
	readonly name: string;
	readonly state: RosterState;
}

/** Those whose name holds what was typed, and beside whose name the word stands. */
export function find<Row extends OnRoster>(rows: readonly Row[], { name, word }: Asked): Row[] {
	const part = loose(name);
	return rows.filter(
		(row) => loose(row.name).includes(part) && (word === null || row.state.word === word)
	);
}

/** Accents, apostrophes, hyphens, stretched letters, case and space: who searches may leave them out. */
const loose = (text: string) =>
	text
		.normalize('NFKD')
		.replace(/[\p{M}\p{P}\p{Cf}`´\u0640]/gu, '')
		.replace(/\s+/g, ' ')
		.trim()
		.toLowerCase();
