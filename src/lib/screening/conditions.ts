import type { Condition, Ruleset } from './ruleset.ts';
import type { Answers } from './types.ts';

type Facts = Pick<Ruleset, 'facts'>;

/**
 * Whether a condition holds for these answers. A question without an answer makes a condition about
 * it false, so the caller drops hidden answers and settles missing ones first.
 *
 * @throws RangeError for a fact that the rule set does not know
 */
export function holds(condition: Condition, ruleset: Facts, answers: Answers): boolean {
	if ('fact' in condition) return holds(factNamed(condition.fact, ruleset), ruleset, answers);
	if ('all' in condition) return condition.all.every((part) => holds(part, ruleset, answers));
	if ('any' in condition) return condition.any.some((part) => holds(part, ruleset, answers));
	if ('not' in condition) return !holds(condition.not, ruleset, answers);
	if ('count' in condition) {
		const holding = condition.count.filter((part) => holds(part, ruleset, answers));
		return holding.length >= condition.reaches;
	}
	if ('outside' in condition) return false;
	return answerHolds(condition, answers[condition.question]);
}

type AnswerCondition = Extract<Condition, { readonly question: string }>;

function answerHolds(condition: AnswerCondition, answer: Answers[string]): boolean {
	if ('is' in condition) return typeof answer === 'string' && condition.is.includes(answer);
	if ('has' in condition) return condition.has.some((option) => ticked(answer).includes(option));
	if (typeof answer !== 'number') return false;
	if ('over' in condition) return answer > condition.over;
	if ('atLeast' in condition) return answer >= condition.atLeast;
	return answer < condition.under;
}

/** A lone string counts as one tick: an urgent sign is seen even where the form sent no list. */
function ticked(answer: Answers[string]): readonly unknown[] {
	if (Array.isArray(answer)) return answer;
	return typeof answer === 'string' ? [answer] : [];
}

function factNamed(id: string, ruleset: Facts): Condition {
	const fact = Object.hasOwn(ruleset.facts, id) ? ruleset.facts[id] : undefined;
	if (fact === undefined) throw new RangeError(`a condition requires a known fact, not ${id}`);
	return fact;
}

/** Every question that a condition looks at, through its facts too. */
export function questionsIn(condition: Condition, ruleset: Facts): ReadonlySet<string> {
	const found = new Set<string>();
	collect(condition, ruleset, found);
	return found;
}

function collect(condition: Condition, ruleset: Facts, found: Set<string>): void {
	if ('question' in condition) found.add(condition.question);
	else if ('fact' in condition) collect(factNamed(condition.fact, ruleset), ruleset, found);
	else for (const part of partsOf(condition)) collect(part, ruleset, found);
}

/** The conditions that a condition is built from, facts not followed. */
export function partsOf(condition: Condition): readonly Condition[] {
	if ('all' in condition) return condition.all;
	if ('any' in condition) return condition.any;
	if ('count' in condition) return condition.count;
	return 'not' in condition ? [condition.not] : [];
}
