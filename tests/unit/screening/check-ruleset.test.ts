import { describe, expect, test } from 'vitest';
import { checkRuleset } from '$lib/screening/check-ruleset.ts';
import type { Condition, Question, Rule, Ruleset } from '$lib/screening/ruleset.ts';
import { currentRuleset, rulesetById } from '$lib/screening/rulesets/index.ts';
import { sources } from '$lib/screening/sources.ts';

describe('the published set', () => {
	test('is sound', () => {
		expect(checkRuleset(currentRuleset)).toEqual([]);
	});

	test('is found by its id, and no other id is', () => {
		expect(rulesetById('2026-11')).toBe(currentRuleset);
		expect(() => rulesetById('2026-12')).toThrow(RangeError);
		expect(() => rulesetById('')).toThrow(RangeError);
	});

	test('cannot be changed, at any depth', () => {
		const open: string[] = [];
		const look = (branch: unknown, path: string): void => {
			if (typeof branch !== 'object' || branch === null) return;
			if (!Object.isFrozen(branch)) open.push(path);
			for (const [key, value] of Object.entries(branch)) look(value, `${path}.${key}`);
		};
		look(currentRuleset, 'ruleset');
		expect(open).toEqual([]);
	});

	test('holds no text that a person reads', () => {
		const texts: string[] = [];
		const look = (branch: unknown): void => {
			if (typeof branch === 'string' && /\s/.test(branch)) texts.push(branch);
			else if (typeof branch === 'object' && branch !== null) Object.values(branch).forEach(look);
		};
		look(currentRuleset);
		expect(texts).toEqual([]);
	});

	test('is a draft that no clinician has reviewed, and says so', () => {
		expect(currentRuleset.reviewedByClinician).toBe(false);
		expect(currentRuleset.version).toContain('draft');
	});

	test('asks in the order: urgent, age, plan, activity, today, then the rest', () => {
		expect(currentRuleset.questions.map(({ id }) => id).slice(0, 9)).toEqual([
			'now.urgent',
			'age.years',
			'plan.effort',
			'act.days',
			'act.minutes',
			'act.months',
			'act.hard',
			'ill.today',
			'ill.heart'
		]);
	});

	test('takes not sure for the careful answer everywhere', () => {
		const choices = currentRuleset.questions.filter((question) => question.kind !== 'integer');
		for (const { id, safe } of choices) expect(safe, id).not.toContain('not_sure');
	});

	test('uses every source that is listed', () => {
		const { questions, rules, gates } = currentRuleset;
		const used = new Set([...questions, ...rules, ...gates].flatMap(({ basis }) => [...basis]));
		expect(Object.keys(sources).filter((id) => !used.has(id as never))).toEqual([]);
	});
});

const choice: Question = {
	id: 'new.choice',
	kind: 'single',
	options: [{ id: 'yes', exclusive: false }],
	safe: [],
	showIf: null,
	basis: ['commonPractice']
};
const number: Question = {
	id: 'new.number',
	kind: 'integer',
	lowest: 0,
	highest: 7,
	showIf: null,
	basis: ['commonPractice']
};
const rule: Rule = {
	id: 'R-NEW',
	does: 'outcome',
	when: { question: 'new.choice', is: ['yes'] },
	outcome: 'SEEK_ADVICE',
	kind: 'condition',
	isNew: false,
	urgent: false,
	stopCurrent: false,
	basis: ['commonPractice']
};

function faults(part: Partial<Ruleset> & { question?: Question; rule?: Rule }): readonly string[] {
	const { question, rule: extra, ...rest } = part;
	const whole: Ruleset = {
		...currentRuleset,
		...rest,
		questions: [...currentRuleset.questions, choice, number, ...(question ? [question] : [])],
		rules: [...(rest.rules ?? currentRuleset.rules), ...(extra ? [extra] : [])]
	};
	return checkRuleset(whole).map(({ id, fault }) => `${id}: ${fault}`);
}

describe('a sound addition has no fault', () => {
	test('a question, and a rule about it', () => {
		expect(faults({ question: { ...choice, id: 'new.second' }, rule })).toEqual([]);
	});
});

describe('a condition is at fault', () => {
	test.each<[string, Condition, string]>([
		['about a question that is not there', { question: 'gone', is: ['yes'] }, 'unknown-question'],
		['about an answer that is not there', { question: 'new.choice', is: ['no'] }, 'unknown-option'],
		['about a fact that is not there', { fact: 'gone' }, 'unknown-fact'],
		['about a name that every object has', { fact: 'constructor' }, 'unknown-fact'],
		['about a fact that rests on itself', { fact: 'round' }, 'circular-fact'],
		['about ticks on a single choice', { question: 'new.choice', has: ['yes'] }, 'wrong-kind'],
		['about a number on a choice', { question: 'new.choice', over: 3 }, 'wrong-kind'],
		['about a choice on a number', { question: 'new.number', is: ['3'] }, 'wrong-kind'],
		['that names no answer', { question: 'new.choice', is: [] }, 'never-true'],
		['over the highest number', { question: 'new.number', over: 7 }, 'never-true'],
		['from above the highest number', { question: 'new.number', atLeast: 8 }, 'never-true'],
		['under the lowest number', { question: 'new.number', under: 0 }, 'never-true'],
		['of no alternatives', { any: [] }, 'never-true'],
		[
			'that needs a part that never holds',
			{ all: [{ any: [] }, { fact: 'regular' }] },
			'never-true'
		],
		['that counts too few', { count: [{ fact: 'regular' }], reaches: 2 }, 'never-true'],
		['with something outside in it', { not: { outside: 'urgent-event' } }, 'outside-inside']
	])('%s', (_, when, fault) => {
		const facts = { ...currentRuleset.facts, round: { not: { fact: 'round' } } };
		expect(faults({ facts, rule: { ...rule, when } })).toContain(`R-NEW: ${fault}`);
		expect(faults({ facts: { ...facts, made: when } })).toContain(
			`made: ${'outside' in when ? 'outside-inside' : fault}`
		);
	});
});

describe('a question is at fault', () => {
	const third = { ...choice, id: 'new.third' };

	test.each<[string, Question, string]>([
		['with the id of another', { ...choice, id: 'age.years' }, 'age.years: duplicate-id'],
		[
			'that hangs on a later one',
			{
				...third,
				showIf: {
					any: [
						{ question: 'new.choice', is: ['yes'] },
						{ question: 'new.third', is: ['yes'] }
					]
				}
			},
			'new.third: later-question'
		],
		[
			'that hangs on nothing known',
			{ ...third, showIf: { question: 'gone', is: ['yes'] } },
			'new.third: unknown-question'
		],
		[
			'that no answer can show',
			{ ...third, showIf: { question: 'new.choice', is: [] } },
			'new.third: never-true'
		],
		[
			'that only something outside could show',
			{ ...third, showIf: { outside: 'urgent-event' } },
			'new.third: never-true'
		],
		['without a way to say none', { ...third, kind: 'multi' }, 'new.third: no-way-to-say-none'],
		[
			'with a safe answer that it has not',
			{ ...third, safe: ['no'] },
			'new.third: unknown-safe-answer'
		],
		[
			'with two answers of one id',
			{ ...third, options: [...choice.options, ...choice.options] },
			'new.third: duplicate-id'
		],
		['with no range', { ...number, id: 'new.third', lowest: 7 }, 'new.third: empty-range'],
		['that rests on nothing', { ...third, basis: [] }, 'new.third: missing-basis'],
		[
			'that rests on a rumour',
			{ ...third, basis: ['commonPractice', 'rumour' as never] },
			'new.third: unknown-source'
		]
	])('%s', (_, question, expected) => {
		expect(faults({ question })).toContain(expected);
	});
});

describe('a rule is at fault', () => {
	test.each<[string, Partial<Rule>, string]>([
		['without a kind', { kind: undefined as never }, 'R-NEW: missing-kind'],
		['without an outcome', { outcome: undefined as never }, 'R-NEW: missing-outcome'],
		['with an outcome that is none', { outcome: 'FINE' as never }, 'R-NEW: missing-outcome'],
		['with the id of another', { id: 'R-FAINT' }, 'R-FAINT: duplicate-id'],
		['that rests on nothing', { basis: [] }, 'R-NEW: missing-basis']
	])('%s', (_, part, expected) => {
		expect(faults({ rule: { ...rule, ...part } as Rule })).toContain(expected);
	});
});

describe('a whole set is at fault', () => {
	const { kept, outcomes, planLimits, conflicts, rules } = currentRuleset;
	const { WAIT: _wait, ...noWait } = outcomes;
	const { walk: _walk, ...noWalk } = planLimits;

	test.each<[string, Partial<Ruleset>, string]>([
		['without a version', { version: 'one' }, '2026-11: bad-version'],
		['without an outcome', { outcomes: noWait as never }, '2026-11: missing-outcome'],
		['without a plan', { planLimits: noWalk as never }, '2026-11: missing-outcome'],
		[
			'that keeps what it does not ask',
			{ kept: { ...kept, plan: 'gone' } },
			'gone: unknown-question'
		],
		[
			'with a conflict about nothing',
			{ conflicts: [{ ...conflicts[0]!, fix: ['gone'] }] },
			'gone: unknown-question'
		],
		[
			'without a rule for urgent events',
			{ rules: rules.filter(({ id }) => id !== 'R-EVENT') },
			'2026-11: nothing-outside'
		],
		[
			'without a rule for a resting pulse out of range',
			{ rules: rules.filter(({ id }) => id !== 'H-REST') },
			'2026-11: nothing-outside'
		]
	])('%s', (_, part, expected) => {
		expect(faults(part)).toContain(expected);
	});
});
