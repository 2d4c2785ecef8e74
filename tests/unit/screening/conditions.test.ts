import { expect, test } from 'vitest';
import { holds, questionsIn } from '$lib/screening/conditions.ts';
import type { Condition } from '$lib/screening/ruleset.ts';
import type { Answers } from '$lib/screening/types.ts';

const facts: Record<string, Condition> = {
	ill: { question: 'ill', is: ['yes'] },
	old: { all: [{ fact: 'ill' }, { question: 'age', over: 69 }] }
};
const answers: Answers = { ill: 'yes', age: 70, signs: ['ankles', 'tired'] };
const yes: Condition = { fact: 'ill' };
const no: Condition = { question: 'ill', is: ['no'] };

test.each<[string, Condition, boolean]>([
	['one of the choices', { question: 'ill', is: ['no', 'yes'] }, true],
	['none of the choices', no, false],
	['one of the ticks', { question: 'signs', has: ['murmur', 'tired'] }, true],
	['none of the ticks', { question: 'signs', has: ['murmur'] }, false],
	['a choice asked for ticks', { question: 'ill', has: ['yes'] }, true],
	['ticks asked for a choice', { question: 'signs', is: ['ankles'] }, false],
	['over', { question: 'age', over: 69 }, true],
	['not over itself', { question: 'age', over: 70 }, false],
	['at least itself', { question: 'age', atLeast: 70 }, true],
	['not at least one more', { question: 'age', atLeast: 71 }, false],
	['under', { question: 'age', under: 71 }, true],
	['not under itself', { question: 'age', under: 70 }, false],
	['a number asked of a choice', { question: 'ill', over: 0 }, false],
	['a fact', { fact: 'ill' }, true],
	['a fact on a fact', { fact: 'old' }, true],
	['all', { all: [yes, yes] }, true],
	['not all', { all: [yes, no] }, false],
	['any', { any: [no, yes] }, true],
	['not any', { any: [no, no] }, false],
	['not', { not: no }, true],
	['enough of them', { count: [yes, no, yes], reaches: 2 }, true],
	['too few of them', { count: [yes, no, no], reaches: 2 }, false],
	['something outside the form', { outside: 'urgent-event' }, false]
])('%s: %j is %s', (_, condition, expected) => {
	expect(holds(condition, { facts }, answers)).toBe(expected);
});

test.each<Condition>([
	{ question: 'other', is: ['yes'] },
	{ question: 'other', has: ['yes'] },
	{ question: 'other', over: -1 },
	{ question: 'other', atLeast: 0 },
	{ question: 'other', under: 1 }
])('a question without an answer makes %j false', (condition) => {
	expect(holds(condition, { facts }, answers)).toBe(false);
});

test.each(['gone', 'constructor', 'toString'])('the fact %s is the caller’s mistake', (fact) => {
	expect(() => holds({ fact }, { facts }, answers)).toThrow(RangeError);
});

test('every question is found, through facts too', () => {
	const condition: Condition = {
		any: [{ not: { fact: 'old' } }, { count: [{ question: 'signs', has: ['x'] }], reaches: 1 }]
	};
	expect([...questionsIn(condition, { facts })].sort()).toEqual(['age', 'ill', 'signs']);
	expect([...questionsIn({ outside: 'urgent-event' }, { facts })]).toEqual([]);
});
