import { partsOf } from './conditions.ts';
import type { Condition, Question, Ruleset } from './ruleset.ts';

export type ConditionFault =
	| 'unknown-question'
	| 'unknown-option'
	| 'unknown-fact'
	| 'circular-fact'
	/** A condition about numbers on a choice, about ticks on a single choice, and so on. */
	| 'wrong-kind'
	/** Something outside the form, inside a larger condition: it could never hold there. */
	| 'outside-inside'
	/** No answer can make it true. */
	| 'never-true';

type Parts = Pick<Ruleset, 'questions' | 'facts'>;

/** What is wrong with a condition, its facts included. An empty list means that it can be used. */
export function conditionFaults(condition: Condition, ruleset: Parts): readonly ConditionFault[] {
	if ('outside' in condition) return [];
	const faults = faultsWithin(condition, ruleset, []);
	if (faults.length > 0) return faults;
	return canHold(condition, ruleset) ? [] : ['never-true'];
}

function faultsWithin(
	condition: Condition,
	ruleset: Parts,
	factsAbove: readonly string[]
): readonly ConditionFault[] {
	if ('outside' in condition) return ['outside-inside'];
	if ('question' in condition) return answerFaults(condition, ruleset);
	if ('fact' in condition) {
		const fact = Object.hasOwn(ruleset.facts, condition.fact)
			? ruleset.facts[condition.fact]
			: undefined;
		if (fact === undefined) return ['unknown-fact'];
		if (factsAbove.includes(condition.fact)) return ['circular-fact'];
		return faultsWithin(fact, ruleset, [...factsAbove, condition.fact]);
	}
	return partsOf(condition).flatMap((part) => faultsWithin(part, ruleset, factsAbove));
}

function answerFaults(
	condition: Extract<Condition, { readonly question: string }>,
	ruleset: Parts
): readonly ConditionFault[] {
	const question = ruleset.questions.find(({ id }) => id === condition.question);
	if (question === undefined) return ['unknown-question'];
	const wanted = 'is' in condition ? 'single' : 'has' in condition ? 'multi' : 'integer';
	if (question.kind !== wanted) return ['wrong-kind'];
	const named = 'is' in condition ? condition.is : 'has' in condition ? condition.has : [];
	return named.every((id) => optionIds(question).includes(id)) ? [] : ['unknown-option'];
}

/** Looks at each part alone, so it finds dead parts, not parts that contradict each other. */
function canHold(condition: Condition, ruleset: Parts): boolean {
	if ('is' in condition) return condition.is.length > 0;
	if ('has' in condition) return condition.has.length > 0;
	if ('all' in condition) return condition.all.every((part) => canHold(part, ruleset));
	if ('any' in condition) return condition.any.some((part) => canHold(part, ruleset));
	if ('count' in condition) {
		return condition.count.filter((part) => canHold(part, ruleset)).length >= condition.reaches;
	}
	if ('fact' in condition) return canHold(ruleset.facts[condition.fact] as Condition, ruleset);
	if ('question' in condition) return someNumberFits(condition, ruleset);
	return 'not' in condition;
}

function someNumberFits(
	condition: Extract<Condition, { readonly question: string }>,
	ruleset: Parts
): boolean {
	const question = ruleset.questions.find(({ id }) => id === condition.question);
	if (question?.kind !== 'integer') return false;
	if ('over' in condition) return condition.over < question.highest;
	if ('atLeast' in condition) return condition.atLeast <= question.highest;
	return 'under' in condition && condition.under > question.lowest;
}

function optionIds(question: Question): readonly string[] {
	return question.kind === 'integer' ? [] : question.options.map(({ id }) => id);
}
