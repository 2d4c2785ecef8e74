import { holds } from './conditions.ts';
import type { Question, Ruleset } from './ruleset.ts';
import type { Answer, Answers } from './types.ts';

/**
 * The questions to ask, in order, given the answers so far. A follow-up that hangs on a hidden
 * question is hidden as well, whatever was once answered there.
 */
export function visibleQuestions(ruleset: Ruleset, answers: Answers): readonly Question[] {
	return walk(ruleset, answers).visible;
}

/** The answers to visible questions only. Stale answers to hidden ones are dropped. */
export function answersOf(ruleset: Ruleset, answers: Answers): Answers {
	return walk(ruleset, answers).seen;
}

function walk(ruleset: Ruleset, answers: Answers) {
	const visible: Question[] = [];
	const seen: Record<string, Answer> = {};
	for (const question of ruleset.questions) {
		if (question.showIf !== null && !holds(question.showIf, ruleset, seen)) continue;
		visible.push(question);
		const answer = Object.hasOwn(answers, question.id) ? answers[question.id] : undefined;
		if (answer !== undefined) seen[question.id] = answer;
	}
	return { visible, seen };
}
