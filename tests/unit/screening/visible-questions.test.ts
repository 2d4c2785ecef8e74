import { describe, expect, test } from 'vitest';
import type { Ruleset } from '$lib/screening/ruleset.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Answers } from '$lib/screening/types.ts';
import { answersOf, visibleQuestions } from '$lib/screening/visible-questions.ts';
import { person, steadyHeart } from './people.ts';

const shown = (answers: Answers) => visibleQuestions(currentRuleset, answers).map(({ id }) => id);

test('with nothing answered the 22 questions without a condition are asked', () => {
	expect(shown({})).toHaveLength(22);
	expect(shown({})).toEqual(
		currentRuleset.questions.filter(({ showIf }) => showIf === null).map(({ id }) => id)
	);
});

test('the person with nothing flagged is asked no follow-up', () => {
	expect(shown(person())).toEqual(shown({}));
});

describe('a follow-up is asked', () => {
	test.each<[string, Answers, readonly string[]]>([
		[
			'after yes',
			{ 'heart.told': 'yes' },
			['heart.hard', 'heart.rhythm', 'heart.failure', 'heart.quiet2m']
		],
		['after not sure', { 'bp.told': 'not_sure' }, ['bp.hard', 'bp.last']],
		[
			'after a tick',
			{ 'cond.list': ['diabetes', 'lung'] },
			['cond.diabetes', 'cond.lung', 'meds.sugar']
		],
		['after either of two', { 'meds.rate': 'yes' }, ['meds.why']],
		['after the other of two', { 'meds.long': 'not_sure' }, ['meds.why']],
		['where somebody would rather not say', { 'preg.status': 'private' }, ['preg.ok']],
		['about dizzy spells', { 'dizzy.balance': 'yes' }, ['dizzy.breathing']],
		['about a sore part', { 'joint.sore': 'not_sure' }, ['joint.now']]
	])('%s', (_, change, followUps) => {
		const extra = shown(person(change)).filter((id) => !shown({}).includes(id));
		expect(extra).toEqual(followUps);
	});
});

test('follow-ups stand in the order of the rule set', () => {
	const ids = shown(person({ ...steadyHeart, 'cond.list': ['lung'], 'meds.rate': 'yes' }));
	const order = currentRuleset.questions.map(({ id }) => id);
	expect(ids).toEqual(order.filter((id) => ids.includes(id)));
});

test('answers to hidden questions are dropped, the rest stay', () => {
	const stale = person({ 'heart.hard': 'yes', 'cond.cancer': ['now'], 'made.up': 'x' });
	expect(answersOf(currentRuleset, stale)).toEqual(person());
});

test('what was never answered is not in the answers', () => {
	expect(answersOf(currentRuleset, { 'bp.told': undefined })).toEqual({});
});

test('a follow-up of a hidden follow-up stays hidden, whatever was once answered there', () => {
	const yesTo = (question: string) => ({ question, is: ['yes'] });
	const [told, hard] = ['heart.told', 'heart.hard'].map((id) =>
		currentRuleset.questions.find((question) => question.id === id)!
	);
	const third = { ...hard!, id: 'third', showIf: yesTo('heart.hard') };
	const chain: Ruleset = { ...currentRuleset, questions: [told!, hard!, third] };
	const ids = (answers: Answers) => visibleQuestions(chain, answers).map(({ id }) => id);
	expect(ids({ 'heart.told': 'yes', 'heart.hard': 'yes' })).toContain('third');
	expect(ids({ 'heart.told': 'no', 'heart.hard': 'yes' })).toEqual(['heart.told']);
});
