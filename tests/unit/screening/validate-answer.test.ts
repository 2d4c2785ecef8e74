import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Question } from '$lib/screening/ruleset.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { answerIssue, checkAnswer } from '$lib/screening/validate-answer.ts';

function question(id: string): Question {
	const found = currentRuleset.questions.find((one) => one.id === id);
	if (found === undefined) throw new RangeError(`no question ${id}`);
	return found;
}

const age = question('age.years');
const told = question('heart.told');
const signs = question('signs.other');

describe('nothing sent is missing, for every question', () => {
	test.each(currentRuleset.questions)('$id', (one) => {
		for (const nothing of [undefined, null, '', '  ', [], [''], ['', undefined]]) {
			expect(checkAnswer(one, nothing)).toEqual({ ok: false, issue: 'missing' });
		}
	});
});

describe('a number', () => {
	test.each([
		['46', 46],
		[' 46 ', 46],
		['+46', 46],
		['046', 46],
		['0', 0],
		['-0', 0],
		['120', 120],
		[['46'], 46]
	])('%j is %i', (raw, answer) => {
		const checked = checkAnswer(age, raw);
		expect(checked).toEqual({ ok: true, answer });
	});

	test.each([
		['1.7', 'not-whole'],
		['1,7', 'not-whole'],
		['.5', 'not-whole'],
		['46.0', 'not-whole'],
		['170', 'too-high'],
		['121', 'too-high'],
		['1980', 'too-high'],
		['99999999999999999999', 'too-high'],
		['-1', 'too-low'],
		['46 years', 'not-a-number'],
		['forty-six', 'not-a-number'],
		['4e1', 'not-a-number'],
		['0x2e', 'not-a-number'],
		['４６', 'not-a-number'],
		['NaN', 'not-a-number'],
		['Infinity', 'not-a-number'],
		['1.7.2', 'not-a-number'],
		[46, 'not-a-number'],
		[{}, 'not-a-number'],
		[['46', '47'], 'too-many']
	])('%j is %s', (raw, issue) => {
		expect(checkAnswer(age, raw)).toEqual({ ok: false, issue });
	});
});

describe('one choice', () => {
	test.each(['yes', ' no ', ['not_sure']])('%j', (raw) => {
		expect(checkAnswer(told, raw)).toEqual({ ok: true, answer: String(raw).trim() });
	});

	test.each([
		['maybe', 'unknown-option'],
		['YES', 'unknown-option'],
		['constructor', 'unknown-option'],
		[7, 'unknown-option'],
		[{}, 'unknown-option'],
		[['yes', 'no'], 'too-many'],
		[['yes', 'yes'], 'too-many']
	])('%j is %s', (raw, issue) => {
		expect(checkAnswer(told, raw)).toEqual({ ok: false, issue });
	});
});

describe('several ticks', () => {
	test('come back once each, in the order of the question', () => {
		expect(checkAnswer(signs, ['tired', 'ankles', 'tired'])).toEqual({
			ok: true,
			answer: ['ankles', 'tired']
		});
		expect(checkAnswer(signs, 'ankles')).toEqual({ ok: true, answer: ['ankles'] });
		expect(checkAnswer(signs, ['none'])).toEqual({ ok: true, answer: ['none'] });
	});

	test('may be all signs, and one of them twice', () => {
		const all = ['breathless', 'lying', 'ankles', 'palpitations', 'legpain', 'murmur', 'tired'];
		expect(checkAnswer(signs, [...all, 'tired'])).toEqual({ ok: true, answer: all });
	});

	test.each([
		[['none', 'ankles'], 'exclusive-mixed'],
		[['ankles', 'none'], 'exclusive-mixed'],
		[['ankles', 'elbows'], 'unknown-option'],
		[['ankles', ''], 'unknown-option'],
		[['ankles', 3], 'unknown-option'],
		[Array.from({ length: 9 }, () => 'ankles'), 'too-many']
	])('%j is %s', (raw, issue) => {
		expect(checkAnswer(signs, raw)).toEqual({ ok: false, issue });
	});
});

describe('an answer that is already typed', () => {
	test.each([
		[age, 46, null],
		[age, 46.5, 'not-whole'],
		[age, Number.NaN, 'not-a-number'],
		[age, Number.POSITIVE_INFINITY, 'too-high'],
		[age, '46', 'not-a-number'],
		[told, 'yes', null],
		[told, ['yes'], 'unknown-option'],
		[signs, ['ankles'], null],
		[signs, 'ankles', 'unknown-option'],
		[signs, new Array(3), 'unknown-option'],
		[signs, [['ankles']], 'unknown-option']
	])('%o as %j: %s', (one, answer, issue) => {
		expect(answerIssue(one, answer)).toBe(issue);
	});
});

test('whatever comes is an answer or an issue, and what is accepted stays accepted', () => {
	fc.assert(
		fc.property(fc.constantFrom(...currentRuleset.questions), fc.anything(), (one, raw) => {
			const checked = checkAnswer(one, raw);
			if (checked.ok) expect(answerIssue(one, checked.answer)).toBeNull();
			else expect(checked.issue).toMatch(/^[a-z-]+$/);
		}),
		{ numRuns: 5000 }
	);
});
