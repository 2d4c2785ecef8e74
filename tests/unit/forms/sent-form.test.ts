import { expect, test } from 'vitest';
import { sentForm } from '$lib/forms/sent-form.ts';

// Common practice, no source.

const words = { missing: 'Fill this in.' };
const back = {
	issues: [
		{ field: 'age', code: 'missing' },
		{ field: 'days', code: 'odd' }
	],
	values: { age: '', name: 'Ines', days: ['mon', 'tue'], one: 'yes', agree: true }
};

test.each([[null], [undefined], [{}], [{ issues: null, values: null }], [{ issues: [] }]])(
	'a form that was not sent, or was taken, has no issue and nothing typed: %j',
	(form) => {
		const { issues, issueOf, typed, picked } = sentForm(form, words);
		expect(issues).toEqual([]);
		expect(issueOf('age')).toBeNull();
		expect(typed('age')).toBe('');
		expect(typed('age', '34')).toBe('34');
		expect(picked('days')).toEqual([]);
	}
);

test('an issue is said in words, and by its code where there are none', () => {
	const { issueOf } = sentForm(back, words);
	expect(issueOf('age')).toBe('Fill this in.');
	expect(issueOf('days')).toBe('odd');
	expect(issueOf('name')).toBeNull();
});

test('words may depend on the field', () => {
	const { issueOf } = sentForm(back, (code, field) => `${field} is ${code}`);
	expect(issueOf('age')).toBe('age is missing');
});

test('of two issues of a field the first is said at it', () => {
	const issues = [
		{ field: 'age', code: 'missing' },
		{ field: 'age', code: 'odd' }
	];
	expect(sentForm({ issues }, words).issueOf('age')).toBe('Fill this in.');
});

test('the summary keeps the order, and may name each field', () => {
	expect(sentForm(back, words).issues.map(({ field }) => field)).toEqual(['age', 'days']);
	const { issues } = sentForm(back, words, (field, text) => `${field}: ${text}`);
	expect(issues[0]).toEqual({ field: 'age', text: 'age: Fill this in.' });
});

test('what was typed is kept, an empty answer too, and nothing that is no text', () => {
	const { typed } = sentForm(back, words);
	expect(typed('name')).toBe('Ines');
	expect(typed('age', '34')).toBe('');
	expect(typed('agree', 'no')).toBe('no');
	expect(typed('days', '')).toBe('');
});

test('what was picked is a list, of one or of several', () => {
	const { picked } = sentForm(back, words);
	expect(picked('days')).toEqual(['mon', 'tue']);
	expect(picked('one')).toEqual(['yes']);
	expect(picked('agree')).toEqual([]);
	expect(picked('nowhere')).toEqual([]);
});
