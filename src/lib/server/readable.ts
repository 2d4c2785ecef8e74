import { Unreadable } from './vault.ts';

/** A row that could not be read: in which table it is, and when it was written where that is known. */
export interface Missed {
	readonly table: string;
	/** Epoch milliseconds. */
	readonly at: number | null;
}

/** Hears of each row that cannot be read. */
export type Note = (missed: Missed) => void;

/** For where nothing is opened by what is left out, and the account names it already. */
export const passOver: Note = () => undefined;

/**
 * Reads every row. For somebody's own account and file, one that cannot be read is noted and the
 * others go on. Without a note it throws: what opens the gate is worked out from all rows or not at
 * all.
 * @throws Unreadable, where nobody takes a note
 */
export function readEach<Row, Kept>(
	rows: readonly Row[],
	read: (row: Row) => Kept,
	at: (row: Row) => number,
	note?: Note
): Kept[] {
	return rows.flatMap((row) => {
		try {
			return [read(row)];
		} catch (error) {
			if (note === undefined || !(error instanceof Unreadable)) throw error;
			note({ table: error.table, at: at(row) });
			return [];
		}
	});
}

/**
 * What a sealed value becomes that cannot be opened and has to go: its content is gone, and the row
 * stays one that cannot be read. Taken away, it would open what it closes.
 */
export const EMPTIED = '';

/** Every row, and those that cannot be read beside them: for what is deleted without being opened. */
export function readApart<Row, Kept>(
	rows: readonly Row[],
	read: (row: Row) => Kept
): { readonly kept: readonly Kept[]; readonly spoilt: readonly Row[] } {
	const spoilt: Row[] = [];
	const kept = rows.flatMap((row) => {
		try {
			return [read(row)];
		} catch (error) {
			if (!(error instanceof Unreadable)) throw error;
			spoilt.push(row);
			return [];
		}
	});
	return { kept, spoilt };
}

/** What stands in one row, or what there is instead where it cannot be read. */
export async function readOr<Kept>(
	read: () => Promise<Kept>,
	instead: Kept,
	note: Note
): Promise<Kept> {
	try {
		return await read();
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		note({ table: error.table, at: null });
		return instead;
	}
}

/** @throws Unreadable, for what is no JSON */
export function readJson(column: string, table: string): unknown {
	try {
		return JSON.parse(column);
	} catch {
		throw new Unreadable(table);
	}
}
