import { describe, expect, test } from 'vitest';
import { evaluate } from '$lib/screening/evaluate.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Ruleset } from '$lib/screening/ruleset.ts';
import type { Answers } from '$lib/screening/types.ts';
import { firingAnswers, quietAnswers } from './firing-answers.ts';
import { outcomeOf, person, steadyHeart } from './people.ts';
import { nothingFlagged, workedCases, type WorkedCase } from './worked-cases.ts';

function answersOf({ change, unanswered }: WorkedCase): Answers {
	if (unanswered === 'the rest') return change;
	const all: Answers = { ...nothingFlagged, ...change };
	return Object.fromEntries(Object.entries(all).filter(([id]) => !unanswered.includes(id)));
}

/** What a page could show of an evaluation; a status without a part shows its closed value. */
function shown(answers: Answers) {
	const evaluation = evaluate(currentRuleset, answers);
	const reasons = 'reasons' in evaluation ? evaluation.reasons : [];
	return {
		status: evaluation.status,
		reasons: reasons.filter((id) => /^[RSG]-/.test(id)).sort(),
		pulse: 'pulse' in evaluation ? evaluation.pulse : 'off',
		pulseReasons: 'pulse' in evaluation ? evaluation.pulseReasons : [],
		startEffort: 'startEffort' in evaluation ? evaluation.startEffort : null,
		careNotes: 'advice' in evaluation ? [...evaluation.advice].sort() : [],
		run: 'run' in evaluation && evaluation.run,
		urgent: 'urgent' in evaluation && evaluation.urgent,
		stopCurrent: 'stopCurrent' in evaluation && evaluation.stopCurrent
	};
}

describe('nothing answered', () => {
	test('is incomplete, and names every question that is always asked', () => {
		const evaluation = evaluate(currentRuleset, {});
		const always = currentRuleset.questions.filter(({ showIf }) => showIf === null);
		expect(evaluation).toEqual({
			status: 'INCOMPLETE',
			missing: always.map(({ id }) => id),
			invalid: [],
			conflicts: [],
			broken: false
		});
	});
});

describe('worked cases', () => {
	test.each(workedCases)('$title', (workedCase) => {
		const { expected } = workedCase;
		expect(shown(answersOf(workedCase))).toEqual({
			...expected,
			reasons: [...expected.reasons].sort(),
			careNotes: [...expected.careNotes].sort()
		});
	});
});

describe('a rule is set off by each answer that its topic names', () => {
	test.each(firingAnswers)('%s by %j', (rule, change) => {
		expect(outcomeOf(change)).toMatchObject({ reasons: expect.arrayContaining([rule]) });
	});

	test.each(quietAnswers)('%s not by %j', (rule, change) => {
		const evaluation = outcomeOf(change);
		expect(evaluation).toHaveProperty('reasons');
		expect('reasons' in evaluation && evaluation.reasons).not.toContain(rule);
	});

	test('and every rule that answers can set off has such an answer', () => {
		const tried = new Set(firingAnswers.map(([rule]) => rule));
		const fromAnswers = currentRuleset.rules.filter(({ when }) => !('outside' in when));
		expect(fromAnswers.map(({ id }) => id).filter((id) => !tried.has(id))).toEqual([]);
	});
});

describe('reasons', () => {
	test('all that fired are kept, in the order of the rule set', () => {
		const evaluation = outcomeOf({
			...steadyHeart,
			'chest.pain': ['exercise'],
			'faint.year': 'yes',
			'meds.rate': 'yes',
			'meds.why': 'told',
			'age.years': 66
		});
		expect('reasons' in evaluation && evaluation.reasons).toEqual([
			'R-CHEST-EXERCISE',
			'R-FAINT',
			'R-CMR-ACTIVE',
			'H-MEDS',
			'H-HEART',
			'S-COND',
			'A-HEAT'
		]);
	});

	test('a mild reason never hides a severe one', () => {
		expect(outcomeOf({ ...steadyHeart, 'chest.pain': ['rest'], 'ill.today': 'yes' })).toMatchObject(
			{
				status: 'SEEK_ADVICE',
				urgent: true
			}
		);
	});
});

describe('an urgent sign wins over everything', () => {
	const emergency = {
		status: 'EMERGENCY',
		reasons: ['R-NOW'],
		urgent: true,
		stopCurrent: true
	};

	test.each([
		['nothing else answered', {}],
		['under 18', { 'age.years': 12 }],
		['answers that do not fit together', { 'meds.long': 'yes', 'meds.why': 'told' }],
		['junk elsewhere', { 'age.years': {} as never, nonsense: 'x' }]
	])('%s', (_, more) => {
		const answers = { ...more, 'now.urgent': ['stroke'] };
		expect(evaluate(currentRuleset, answers)).toEqual(emergency);
		expect(evaluate(currentRuleset, { ...person(), ...answers })).toEqual(emergency);
	});

	test('ticked together with none of these', () => {
		expect(outcomeOf({ 'now.urgent': ['chest', 'none'] })).toEqual(emergency);
	});

	test('sent as one string instead of a list', () => {
		expect(outcomeOf({ 'now.urgent': 'chest' })).toEqual(emergency);
	});

	test('even where the rest of the rules cannot be used', () => {
		const broken: Ruleset = { ...currentRuleset, facts: {} };
		expect(evaluate(broken, person({ 'now.urgent': ['chest'] }))).toEqual(emergency);
	});
});

describe('whoever is under 18 is not asked further', () => {
	test.each([0, 17])('at %i', (age) => {
		expect(evaluate(currentRuleset, { 'age.years': age })).toEqual({
			status: 'NOT_ELIGIBLE',
			reasons: ['G-MINOR']
		});
	});

	test('at 18 the adult questions count', () => {
		expect(outcomeOf({ 'age.years': 18 })).toMatchObject({ status: 'CLEARED_ALL' });
	});

	test.each([-1, 121, 17.5, 46.5, Number.NaN, '17', '34', null])(
		'an age of %s decides nothing',
		(age) => {
			expect(outcomeOf({ 'age.years': age as never })).toMatchObject({ status: 'INCOMPLETE' });
		}
	);
});

describe('what cannot be read is named and clears nobody', () => {
	test('a list of holes is not an answer', () => {
		expect(outcomeOf({ 'chest.pain': new Array(2) })).toMatchObject({
			status: 'INCOMPLETE',
			invalid: [{ question: 'chest.pain', issue: 'unknown-option' }]
		});
	});

	test('an empty list and an empty string are missing', () => {
		expect(outcomeOf({ 'chest.pain': [], 'bp.told': '' })).toMatchObject({
			status: 'INCOMPLETE',
			missing: ['chest.pain', 'bp.told'],
			invalid: []
		});
	});

	test('a question that was never asked', () => {
		expect(outcomeOf({ 'heart.tolt': 'no' })).toMatchObject({
			status: 'INCOMPLETE',
			invalid: [{ question: 'heart.tolt', issue: 'unknown-question' }]
		});
	});

	test('answers that cannot both be true', () => {
		expect(outcomeOf({ 'act.hard': 'yes', 'act.days': 0, 'act.minutes': 0 })).toMatchObject({
			status: 'INCOMPLETE',
			conflicts: ['C-HARD-NONE']
		});
	});

	test('a conflict is named only once all its questions are answered', () => {
		const { 'cond.list': _, ...answers } = person({ 'meds.long': 'yes', 'meds.why': 'told' });
		expect(evaluate(currentRuleset, answers)).toMatchObject({
			missing: ['cond.list'],
			conflicts: []
		});
	});

	test.each([null, undefined, 'yes', 7, [], () => 0])('%s instead of answers', (junk) => {
		expect(evaluate(currentRuleset, junk as never)).toMatchObject({ status: 'INCOMPLETE' });
	});

	test('an answer that throws when it is read', () => {
		const answers = person();
		Object.defineProperty(answers, 'bp.told', {
			enumerable: true,
			get() {
				throw new Error('unreadable');
			}
		});
		expect(evaluate(currentRuleset, answers)).toMatchObject({
			status: 'INCOMPLETE',
			broken: true
		});
	});
});

describe('rules that cannot be trusted clear nobody', () => {
	const [firstRule, ...otherRules] = currentRuleset.rules;

	test.each<[string, Partial<Ruleset>]>([
		['no facts', { facts: {} }],
		['a rule about a question that is gone', { questions: currentRuleset.questions.slice(0, -1) }],
		['two rules with one id', { rules: [...currentRuleset.rules, ...otherRules.slice(0, 1)] }],
		['no plan limits', { planLimits: {} as never }],
		['no rules', { rules: [] }],
		['rules that are missing', { rules: undefined as never }],
		['a rule that is empty', { rules: [firstRule, {}] as never }]
	])('%s', (_, part) => {
		expect(evaluate({ ...currentRuleset, ...part }, person())).toEqual({
			status: 'INCOMPLETE',
			missing: [],
			invalid: [],
			conflicts: [],
			broken: true
		});
	});
});
