import { describe, expect, it, test } from 'vitest';
import { foldPassword, passwordIssue } from '$lib/forms/password.ts';

// Our own rules, no source.

const owner = { email: 'odile.marr+run@example.org', name: 'Odile Marr' };

describe('a password', () => {
	it.each([
		['', 'too-short'],
		['ninechars', 'too-short'],
		['😀'.repeat(9), 'too-short'],
		['x'.repeat(129), 'too-long'],
		['aaaaaaaaaa', 'too-common'],
		['ababababab', 'too-common'],
		['          ', 'too-common'],
		['1234567890', 'too-common'],
		['Password 2026!', 'too-common'],
		['qwertyuiop', 'too-common'],
		['Breathmark1', 'too-common'],
		['odile.marr+run@example.org', 'is-you'],
		['ODILEMARRRUN', 'is-you'],
		['Odile Marr', 'is-you'],
		['odile-marr-1987', 'is-you']
	])('%j is refused: %s', (password, issue) => {
		expect(passwordIssue(password, owner)).toBe(issue);
	});

	it.each([
		'ten letter',
		'seven blue kettles',
		'correct horse',
		'пароль для бега',
		'😀😁😂🤣😃😄😅😆😉😊',
		'x y'.repeat(42),
		'odile marr runs'
	])('%j is taken, whatever its characters are', (password) => {
		expect(passwordIssue(password, owner)).toBeNull();
	});

	it('may be anything beside a name without letters', () => {
		expect(passwordIssue('!?!?!?!?!#', { email: '-@-', name: '—' })).toBeNull();
	});
});

test.each([
	['Pass Word-2026', 'password'],
	['１２３', '123'],
	['0123456789', '0123456789'],
	['!!!', '']
])('%j is compared as %j', (typed, folded) => expect(foldPassword(typed)).toBe(folded));
