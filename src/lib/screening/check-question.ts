import { conditionFaults } from './check-condition.ts';
import { questionsIn } from './conditions.ts';
import type { Question, Ruleset } from './ruleset.ts';
import { basisFaults, type RulesetFault } from './ruleset-fault.ts';

/** What is wrong with a question in its place among the others. */
export function questionFaults(question: Question, ruleset: Ruleset): readonly RulesetFault[] {
	return [
		...basisFaults(question.id, question.basis),
		...showIfFaults(question, ruleset),
		...answerFaults(question)
	];
}

function showIfFaults({ id, showIf }: Question, ruleset: Ruleset): readonly RulesetFault[] {
	if (showIf === null) return [];
	// Nothing outside the form can show a question.
	if ('outside' in showIf) return [{ id, fault: 'never-true' }];
	const faults = conditionFaults(showIf, ruleset);
	if (faults.length > 0) return faults.map((fault) => ({ id, fault }));
	const ids = ruleset.questions.map((question) => question.id);
	const earlier = ids.slice(0, ids.indexOf(id));
	const looksBack = [...questionsIn(showIf, ruleset)].every((asked) => earlier.includes(asked));
	return looksBack ? [] : [{ id, fault: 'later-question' }];
}

function answerFaults(question: Question): readonly RulesetFault[] {
	const { id } = question;
	if (question.kind === 'integer') {
		return question.lowest < question.highest ? [] : [{ id, fault: 'empty-range' }];
	}
	const options = question.options.map((option) => option.id);
	const faults: RulesetFault[] = [];
	if (new Set(options).size < options.length) faults.push({ id, fault: 'duplicate-id' });
	if (question.kind === 'multi' && !question.options.some(({ exclusive }) => exclusive)) {
		faults.push({ id, fault: 'no-way-to-say-none' });
	}
	if (!question.safe.every((safe) => options.includes(safe))) {
		faults.push({ id, fault: 'unknown-safe-answer' });
	}
	return faults;
}
