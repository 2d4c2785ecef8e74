import { describe, expect, it } from 'vitest';
import {
	aboutCoachForm,
	asideForm,
	changePasswordForm,
	signInForm,
	signUpForm,
	signUpSettingForm
} from '$lib/forms/coach-account.ts';
import { readForm } from '$lib/forms/read-form.ts';

// Our own rules, no source, but where one is named.

const formOf = (fields: Record<string, string>) => {
	const form = new FormData();
	for (const [name, text] of Object.entries(fields)) form.set(name, text);
	return form;
};
const complete = {
	name: 'Siobhán O’Neill',
	qualification: '',
	email: 'a@example.org',
	password: 'p'
};
const signUp = (changes: Record<string, string> = {}) =>
	readForm(formOf({ ...complete, ...changes }), signUpForm);

describe('an e-mail', () => {
	it.each([
		[' Ana@Example.ORG ', 'ana@example.org'],
		['ana+run@example.org', 'ana+run@example.org'],
		["o'neill@example.org", "o'neill@example.org"],
		['a.b-c_d@sub.example.co', 'a.b-c_d@sub.example.co']
	])('%j is kept as %j', (typed, kept) => {
		expect(signUp({ email: typed })).toMatchObject({ ok: true, value: { email: kept } });
	});

	// RFC 5321, 4.5.3.1 (M): a path has at most 256 characters with its brackets.
	it.each([
		['', 'missing'],
		['   ', 'missing'],
		['ana', 'not-an-email'],
		['ana@', 'not-an-email'],
		['ana@example', 'not-an-email'],
		['ana b@example.org', 'not-an-email'],
		['ana@example.org\nBcc: eve@example.org', 'not-an-email'],
		[`${'a'.repeat(250)}@b.org`, 'not-an-email']
	])('%j is %s', (typed, code) => {
		expect(signUp({ email: typed })).toMatchObject({ issues: [{ field: 'email', code }] });
	});
});

describe('a coach', () => {
	it('has a name in any script, and a qualification in one line or none', () => {
		expect(signUp()).toMatchObject({ value: { name: 'Siobhán O’Neill', qualification: null } });
		expect(signUp({ name: 'ليلى', qualification: ' Run\r\nleader ' })).toMatchObject({
			value: { name: 'ليلى', qualification: 'Run leader' }
		});
		expect(signUp({ name: '' })).toMatchObject({ issues: [{ field: 'name', code: 'missing' }] });
		expect(signUp({ qualification: 'x'.repeat(121) })).toMatchObject({
			issues: [{ field: 'qualification', code: 'too-long' }]
		});
		const about = formOf({ name: 'Ana', qualification: '' });
		expect(readForm(about, aboutCoachForm)).toMatchObject({ ok: true });
	});

	it('has a password as it was typed, spaces at the ends too', () => {
		expect(signUp({ password: ' a b ' })).toMatchObject({ value: { password: ' a b ' } });
		expect(signUp({ password: '' })).toMatchObject({
			issues: [{ field: 'password', code: 'missing' }]
		});
	});

	it('stays signed in only where the box is ticked', () => {
		const typed = { email: 'a@example.org', password: 'p' };
		expect(readForm(formOf(typed), signInForm)).toMatchObject({ ok: true });
		expect(readForm(formOf({ ...typed, stay: 'yes' }), signInForm)).toMatchObject({
			value: { stay: 'yes' }
		});
	});

	it('sends no book for a password', () => {
		const long = { current: 'x'.repeat(257), password: 'x' };
		expect(readForm(formOf(long), changePasswordForm)).toMatchObject({
			issues: [{ field: 'current', code: 'too-long' }]
		});
	});

	it('ticks and picks what the page offers, and nothing else', () => {
		expect(readForm(formOf({}), asideForm)).toMatchObject({
			issues: [{ field: 'aside', code: 'missing' }]
		});
		expect(readForm(formOf({ signUp: 'first' }), signUpSettingForm)).toMatchObject({
			issues: [{ field: 'signUp', code: 'unknown-option' }]
		});
	});
});
