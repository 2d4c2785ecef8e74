import { CsvError, parse, type InfoRecord, type Options } from 'csv-parse/sync';
import { foldName, personName } from '../forms/person-name.ts';

/** More than any group; a whole club's list still says clearly that it is too long. */
export const MOST_NAMES = 500;
export const MOST_ROWS = 10_000;

/** A name, and the line of the text on which its row ends. */
export interface NamedLine {
	readonly line: number;
	readonly name: string;
}

/** What is wrong with a line. Nothing is added until every line is right. */
export interface LineIssue {
	readonly line: number;
	readonly code: 'missing' | 'too-long' | 'not-a-name' | 'twice' | 'quotes';
	/** The line with the same name, for `twice`. */
	readonly same: number | null;
}

export type NameList =
	| {
			readonly kind: 'read';
			readonly names: readonly NamedLine[];
			readonly issues: readonly LineIssue[];
	  }
	| { readonly kind: 'nothing' }
	| { readonly kind: 'too-many-names' | 'too-many-rows'; readonly count: number };

/** Common heads of a column, folded; from memory. A first and a last name stand in two columns. */
const WHOLE = new Set(['name', 'names', 'full name', 'runner', 'participant', 'member', 'nom']);
const FIRST = new Set(['first name', 'firstname', 'given name', 'forename', 'prénom', 'vorname']);
const LAST = new Set(['last name', 'lastname', 'surname', 'family name', 'nachname']);

const DELIMITERS = [',', ';', '\t'] as const;

/**
 * Reads names out of a list that a spreadsheet wrote (RFC 4180 and its usual kin), or that somebody
 * typed, one a line. Without a head that names a column the first one counts; no other is read.
 */
export function readNameList(text: string): NameList {
	const rows: Row[] = [];
	const delimiter = delimiterOf(text);
	try {
		rows.push(...rowsOf(text, delimiter, MOST_ROWS + 2));
	} catch (error) {
		if (!(error instanceof CsvError)) throw error;
		const line = quotedAt(text, delimiter);
		return { kind: 'read', names: [], issues: [{ line, code: 'quotes', same: null }] };
	}
	const columns = columnsOf(rows[0]?.record ?? []);
	const people = columns.isHead ? rows.slice(1) : rows;
	if (people.length === 0) return { kind: 'nothing' };
	if (people.length > MOST_ROWS) return { kind: 'too-many-rows', count: people.length };
	if (people.length > MOST_NAMES) return { kind: 'too-many-names', count: people.length };
	return checked(people, columns.places);
}

function checked(people: readonly Row[], places: readonly number[]): NameList {
	const names: NamedLine[] = [];
	const issues: LineIssue[] = [];
	const firstWith = new Map<string, number>();
	for (const { record, info } of people) {
		const { lines: line } = info;
		const read = personName.safeParse(places.map((at) => undone(record[at] ?? '')).join(' '));
		const same = read.success ? firstWith.get(foldName(read.data)) : undefined;
		if (!read.success) issues.push({ line, code: codeOf(read.error), same: null });
		else if (same !== undefined) issues.push({ line, code: 'twice', same });
		else {
			firstWith.set(foldName(read.data), line);
			names.push({ line, name: read.data });
		}
	}
	return { kind: 'read', names, issues };
}

/** The line on which the quotation marks begin that break the list: the first after its last row. */
function quotedAt(text: string, delimiter: string): number {
	let lastRead = 0;
	const onRecord: Options['onRecord'] = (record, { lines }) => {
		lastRead = lines;
		return record;
	};
	try {
		parse(text, { ...optionsFor(delimiter), onRecord });
	} catch (error) {
		if (!(error instanceof CsvError)) throw error;
	}
	const left = text.split(/\r\n|\r|\n/).slice(lastRead);
	return (
		lastRead +
		1 +
		Math.max(
			0,
			left.findIndex((line) => line.includes('"'))
		)
	);
}

interface Row {
	readonly record: readonly string[];
	readonly info: InfoRecord;
}

function rowsOf(text: string, delimiter: string, to: number, skipsEmpty = true): Row[] {
	const options = { ...optionsFor(delimiter), to, skip_records_with_empty_values: skipsEmpty };
	return parse(text, options) as unknown as Row[];
}

const optionsFor = (delimiter: string): Options => ({
	delimiter,
	bom: true,
	info: true,
	trim: true,
	relax_column_count: true,
	skip_empty_lines: true
});

/** The one that cuts the first row into the most columns. Where none does, a comma is part of a name. */
function delimiterOf(text: string): string {
	const columns = DELIMITERS.map((delimiter) => {
		try {
			return rowsOf(text, delimiter, 1, false)[0]?.record.length ?? 1;
		} catch {
			return 1;
		}
	});
	const most = Math.max(...columns);
	return most > 1 ? (DELIMITERS[columns.indexOf(most)] ?? ',') : '\t';
}

function columnsOf(first: readonly string[]): { isHead: boolean; places: readonly number[] } {
	const heads = first.map(foldName);
	const at = (known: ReadonlySet<string>) => heads.findIndex((head) => known.has(head));
	const [whole, given, family] = [at(WHOLE), at(FIRST), at(LAST)];
	if (given >= 0 || family >= 0) {
		return { isHead: true, places: [given, family].filter((place) => place >= 0) };
	}
	return whole >= 0 ? { isHead: true, places: [whole] } : { isHead: false, places: [0] };
}

/** Our own export puts a mark before a name that a spreadsheet would take for a formula. */
const undone = (cell: string) => cell.replace(/^'(?=[=+\-@])/, '');

function codeOf(error: { issues: readonly { message: string }[] }): LineIssue['code'] {
	const code = error.issues[0]?.message;
	return code === 'too-long' || code === 'missing' ? code : 'not-a-name';
}
