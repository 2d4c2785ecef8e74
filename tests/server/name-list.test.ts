import { describe, expect, it } from 'vitest';
import { decodeText } from '$lib/server/decode-text.ts';
import { readNameList } from '$lib/server/name-list.ts';

/* Quoting and line ends: RFC 4180, 2. Names are invented. */

const read = (text: string) => {
	const list = readNameList(text);
	if (list.kind !== 'read') throw new Error(list.kind);
	return list;
};
const names = (text: string) => read(text).names.map(({ name }) => name);
const issues = (text: string) => read(text).issues.map(({ line, code }) => `${line} ${code}`);

describe('the text of a file', () => {
	const text = 'Name\r\nZoë Müller\r\nراشد\r\n';
	const utf16 = (order: 'le' | 'be', mark: boolean) => {
		const bytes = Buffer.from((mark ? '\uFEFF' : '') + text, 'utf16le');
		return order === 'le' ? bytes : bytes.swap16();
	};

	it.each([
		['UTF-8', Buffer.from(text), 'utf-8'],
		['UTF-8 with its mark', Buffer.from(`\uFEFF${text}`), 'utf-8'],
		['UTF-16, little end first', utf16('le', true), 'utf-16le'],
		['UTF-16, big end first', utf16('be', true), 'utf-16be'],
		['UTF-16 without a mark', utf16('le', false), 'utf-16le'],
		['UTF-16 without a mark, big end first', utf16('be', false), 'utf-16be']
	])('is read from %s', (_, bytes, encoding) => {
		expect(decodeText(bytes)).toEqual({ text, encoding });
	});

	// WHATWG Encoding Standard, index windows-1252 (M).
	it('is guessed to be Windows-1252 where it is not UTF-8', () => {
		const bytes = Buffer.concat([
			Buffer.from('Siobh'),
			Buffer.of(0xe1),
			Buffer.from('n O'),
			Buffer.of(0x92),
			Buffer.from('Neill '),
			Buffer.of(0x80, 0x8a, 0xff)
		]);
		expect(decodeText(bytes)).toEqual({
			text: 'Siobhán O’Neill €Šÿ',
			encoding: 'windows-1252'
		});
	});

	it('is read where there is nothing', () => {
		expect(decodeText(new Uint8Array())).toEqual({ text: '', encoding: 'utf-8' });
	});
});

describe('a list of names', () => {
	it('has nothing in it', () => {
		for (const text of ['', '\n\n', '\uFEFF', 'Name\n', ';;;\n;;;']) {
			expect(readNameList(text)).toEqual({ kind: 'nothing' });
		}
	});

	it.each([
		['one a line', 'Ines\nTobias', ['Ines', 'Tobias']],
		['the last line without an end', 'Ines\r\nTobias\r\n\r\n', ['Ines', 'Tobias']],
		['old line ends', 'Ines\rTobias\r', ['Ines', 'Tobias']],
		['a head', 'Name\nInes\nTobias', ['Ines', 'Tobias']],
		['a head among others', 'Mail;NAME;Town\ni@x;Ines;Cork\n;Tobias;', ['Ines', 'Tobias']],
		['first and last names', 'Last name\tFirst name\nSilva\tInes', ['Ines Silva']],
		['no head, and more columns', 'Ines,i@x\nTobias,t@x', ['Ines', 'Tobias']],
		['commas inside quotes', '"Silva, Ines",x\n"""Tobi"" Karl",y', ['Silva, Ines', '"Tobi" Karl']],
		['commas inside names alone', 'Tobias\nSilva, Ines', ['Tobias', 'Silva, Ines']],
		['rows of different length', 'Name;Mail\nInes\nTobias;t@x;more', ['Ines', 'Tobias']],
		['Arabic, and an apostrophe', "راشد\nGwen D'Arcy\nO’Neill", ['راشد', "Gwen D'Arcy", 'O’Neill']],
		['what our own export defused', "Name\n'=Ines\n'@Tobias", ['=Ines', '@Tobias']]
	])('with %s', (_, text, expected) => expect(names(text)).toEqual(expected));

	it('tells the line of what is wrong, and every one', () => {
		const long = 'x'.repeat(61);
		const text = `Name;Town\nInes;Cork\n;Cork\n\n—;Cork\nINES;Sligo\n${long};Cork\nTobias;Cork`;
		expect(issues(text)).toEqual(['3 missing', '5 not-a-name', '6 twice', '7 too-long']);
		expect(read(text).issues[2]).toMatchObject({ same: 2 });
		expect(names(text)).toEqual(['Ines', 'Tobias']);
	});

	it('tells where a quotation mark is left open', () => {
		expect(issues('Ines\n"Tobias\nGwen')).toEqual(['2 quotes']);
		// The line on which they begin, however many come after it.
		expect(issues('Name;Mail\nJörg;j@x\n;\nAnna;"open\nNora;n@x\nInes;i@x')).toEqual(['4 quotes']);
		expect(issues('Ines\nTo"bi"as\nGwen')).toEqual(['2 quotes']);
	});

	const people = (count: number) =>
		Array.from({ length: count }, (_, i) => `Runner ${i + 1}`).join('\n');

	it('may hold five hundred names, and says how many are too many', () => {
		expect(names(people(500))).toHaveLength(500);
		expect(names(`Name\n${people(500)}`)).toHaveLength(500);
		expect(readNameList(people(501))).toEqual({ kind: 'too-many-names', count: 501 });
		expect(readNameList(people(10_000))).toEqual({ kind: 'too-many-names', count: 10_000 });
		expect(readNameList(people(10_001)).kind).toBe('too-many-rows');
		expect(readNameList(people(200_000)).kind).toBe('too-many-rows');
	});
});
