import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { csv } from '$lib/server/csv.ts';
import { readNameList } from '$lib/server/name-list.ts';

describe('comma-separated values', () => {
	// RFC 4180, 2: rules 1, 2, 5, 6 and 7.
	it('quote what has to be quoted, and end each line with CR LF', () => {
		expect(csv([['Name'], ['Silva, Ines'], ['"Tobi"'], ['two\nlines'], ['Gwen']])).toBe(
			'\uFEFFName\r\n"Silva, Ines"\r\n"""Tobi"""\r\n"two\nlines"\r\nGwen\r\n'
		);
	});

	// OWASP, CSV Injection (M): the characters that begin a formula.
	it.each(['=1+1', '+353871234567', '-1', '@SUM(A1)', '\tx', '\rx'])(
		'never hold %j as a formula',
		(text) => {
			const [[cell]] = parse(csv([[text]]), { bom: true }) as [[string]];
			expect(cell).toBe(`'${text}`);
		}
	);

	it('leave an apostrophe, Arabic and a minus inside alone', () => {
		expect(csv([["D'Arcy", 'راشد', 'Mei-Lin']])).toBe("\uFEFFD'Arcy,راشد,Mei-Lin\r\n");
	});

	it('are read back as they were by our own import', () => {
		const names = ['=Ines', 'Silva, Ines', '"Tobi" Karl', "D'Arcy", 'راشد'];
		const list = readNameList(csv([['Name', 'Joined'], ...names.map((name) => [name, ''])]));
		expect(list).toMatchObject({ kind: 'read', issues: [] });
		expect(list.kind === 'read' && list.names.map(({ name }) => name)).toEqual(names);
	});
});
