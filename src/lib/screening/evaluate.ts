import { isSound } from './check-ruleset.ts';
import { clinicalEvaluation, idsOf, type ClinicalEvaluation } from './clinical-evaluation.ts';
import { holds } from './conditions.ts';
import type { Ruleset } from './ruleset.ts';
import type { Answers, Plan } from './types.ts';
import { answerIssue, type AnswerIssue } from './validate-answer.ts';
import { answersOf, visibleQuestions } from './visible-questions.ts';

export interface InvalidAnswer {
	readonly question: string;
	readonly issue: AnswerIssue | 'unknown-question';
}

export type Evaluation =
	| {
			readonly status: 'INCOMPLETE';
			/** Visible questions without an answer, in order. */
			readonly missing: readonly string[];
			readonly invalid: readonly InvalidAnswer[];
			/** Ids of conflicts: answers that cannot both be true. */
			readonly conflicts: readonly string[];
			/** True when the rules themselves failed: our fault, and still nobody is cleared. */
			readonly broken: boolean;
	  }
	| { readonly status: 'NOT_ELIGIBLE'; readonly reasons: readonly string[] }
	| {
			readonly status: 'EMERGENCY';
			readonly reasons: readonly string[];
			readonly urgent: true;
			readonly stopCurrent: true;
	  }
	| ClinicalEvaluation;

/**
 * What a set of answers leads to. An urgent sign wins over everything, even with the rest
 * unanswered. Anything missing, invalid, contradictory or broken is INCOMPLETE, never a result.
 *
 * @param answers by question id; answers to hidden questions are ignored. Junk never throws.
 */
export function evaluate(ruleset: Ruleset, answers: Answers): Evaluation {
	try {
		const urgent = urgentSigns(ruleset, answers);
		return urgent.length > 0
			? { status: 'EMERGENCY', reasons: urgent, urgent: true, stopCurrent: true }
			: evaluateWhole(ruleset, answers);
	} catch {
		return { status: 'INCOMPLETE', missing: [], invalid: [], conflicts: [], broken: true };
	}
}

function urgentSigns(ruleset: Ruleset, answers: Answers): readonly string[] {
	return idsOf(
		ruleset.rules.filter(
			(rule) =>
				rule.does === 'outcome' &&
				rule.outcome === 'EMERGENCY' &&
				holds(rule.when, ruleset, answers)
		)
	);
}

function evaluateWhole(ruleset: Ruleset, answers: Answers): Evaluation {
	if (!isSound(ruleset)) throw new RangeError('evaluate requires a sound rule set');
	const visible = visibleQuestions(ruleset, answers);
	const seen = answersOf(ruleset, answers);
	const issues = visible.flatMap((question): InvalidAnswer[] => {
		const issue = answerIssue(question, seen[question.id]);
		return issue === null ? [] : [{ question: question.id, issue }];
	});
	const usable = without(issues, seen);

	const gates = ruleset.gates.filter((gate) => holds(gate.when, ruleset, usable));
	if (gates.length > 0) return { status: 'NOT_ELIGIBLE', reasons: idsOf(gates) };

	const missing = issues.filter(({ issue }) => issue === 'missing').map((one) => one.question);
	const invalid = [
		...issues.filter(({ issue }) => issue !== 'missing'),
		...unknownQuestions(ruleset, answers)
	];
	const conflicts = conflictsIn(ruleset, usable);
	if (missing.length + invalid.length + conflicts.length > 0) {
		return { status: 'INCOMPLETE', missing, invalid, conflicts, broken: false };
	}
	const fired = ruleset.rules.filter((rule) => holds(rule.when, ruleset, usable));
	return clinicalEvaluation(ruleset, fired, usable[ruleset.kept.plan] as Plan);
}

/** A conflict is named only when all that it is about was answered. */
function conflictsIn(ruleset: Ruleset, usable: Answers): readonly string[] {
	return idsOf(
		ruleset.conflicts.filter(
			({ when, fix }) =>
				fix.every((question) => Object.hasOwn(usable, question)) && holds(when, ruleset, usable)
		)
	);
}

/** Answers to questions that were never asked mean that something is wrong with the form. */
function unknownQuestions(ruleset: Ruleset, answers: Answers): readonly InvalidAnswer[] {
	const known = new Set(idsOf(ruleset.questions));
	return Object.keys(answers)
		.filter((question) => answers[question] !== undefined && !known.has(question))
		.map((question) => ({ question, issue: 'unknown-question' }));
}

function without(issues: readonly InvalidAnswer[], answers: Answers): Answers {
	const faulty = new Set(issues.map(({ question }) => question));
	return Object.fromEntries(Object.entries(answers).filter(([id]) => !faulty.has(id)));
}
