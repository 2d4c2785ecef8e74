import { describe, expect, test } from 'vitest';
import { foldName, personName, tidyName } from '$lib/forms/person-name.ts';

/* Names are invented. NFC, NFKC and general categories: Unicode Standard Annex 15 and 44 (M). */

const read = (typed: string) => {
	const parsed = personName.safeParse(typed);
	return parsed.success ? parsed.data : (parsed.error.issues[0]?.message ?? '');
};

describe('a name as it is typed', () => {
	test.each([
		['Ines', 'Ines'],
		['  Mei-Lin \u00A0 Zhou ', 'Mei-Lin Zhou'],
		['Siobhán O’Neill', 'Siobhán O’Neill'],
		["Gwen D'Arcy", "Gwen D'Arcy"],
		['راشد', 'راشد'],
		['عبد الرحمن', 'عبد الرحمن'],
		['\u200Fفاطمة\u200E', 'فاطمة'],
		['李梅', '李梅'],
		['Zoe\u0308', 'Zoë'],
		['N1', 'N1'],
		['<b>Ines</b>', '<b>Ines</b>']
	])('%s is kept as %s', (typed, kept) => expect(read(typed)).toBe(kept));

	test.each([
		['', 'missing'],
		['   ', 'missing'],
		['\u202E\u200B', 'missing'],
		['—', 'not-a-name'],
		['😀', 'not-a-name'],
		['In\u0000es', 'not-a-name'],
		['In\u001Bes', 'not-a-name'],
		['x'.repeat(61), 'too-long']
	])('%j is %s', (typed, code) => expect(read(typed)).toBe(code));

	test('sixty letters are a name', () => expect(read('é'.repeat(60))).toHaveLength(60));

	test('what turns the direction of a line is gone', () => {
		expect(tidyName('Ines \u202Eenod')).toBe('Ines enod');
	});
});

describe('two names are the same', () => {
	test.each([
		['Ines Silva', 'INES  silva'],
		["Siobhán O'Neill", 'siobhán o’neill'],
		['Siobh\u0061\u0301n', 'Siobh\u00E1n'],
		['محمد', 'محـمد'],
		['Ｉｎｅｓ', 'Ines']
	])('%s and %s', (one, other) => expect(foldName(one)).toBe(foldName(other)));

	test.each([
		['Ines', 'Inès'],
		['Ines Silva', 'InesSilva'],
		['Ann', 'Anne']
	])('but not %s and %s', (one, other) => expect(foldName(one)).not.toBe(foldName(other)));
});
