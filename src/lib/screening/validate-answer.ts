import type { ChoiceQuestion, IntegerQuestion, Question } from './ruleset.ts';
import type { Answer } from './types.ts';

export type AnswerIssue =
	| 'missing'
	| 'not-a-number'
	| 'not-whole'
	| 'too-low'
	| 'too-high'
	| 'unknown-option'
	| 'exclusive-mixed'
	| 'too-many';

export type CheckedAnswer =
	| { readonly ok: true; readonly answer: Answer }
	| { readonly ok: false; readonly issue: AnswerIssue };

/**
 * Reads what a form sent for one question: a string, a list of strings, or nothing. Anything else
 * is an issue, never an exception. Ticks come back once each, in the order of the question.
 */
export function checkAnswer(question: Question, raw: unknown): CheckedAnswer {
	const sent = (Array.isArray(raw) ? (raw as readonly unknown[]) : [raw]).map((part) =>
		typeof part === 'string' ? part.trim() : part
	);
	if (sent.every((part) => part === undefined || part === null || part === ''))
		return no('missing');
	if (question.kind === 'multi') return checkTicks(question, sent);
	if (sent.length > 1) return no('too-many');
	return question.kind === 'integer'
		? checkInteger(question, sent[0])
		: checkChoice(question, sent[0]);
}

function checkTicks(question: ChoiceQuestion, sent: readonly unknown[]): CheckedAnswer {
	if (sent.length > question.options.length) return no('too-many');
	const issue = answerIssue(question, sent);
	if (issue !== null) return no(issue);
	const ids = question.options.map((option) => option.id);
	return { ok: true, answer: ids.filter((id) => sent.includes(id)) };
}

function checkChoice(question: ChoiceQuestion, sent: unknown): CheckedAnswer {
	const issue = answerIssue(question, sent);
	return issue === null && typeof sent === 'string'
		? { ok: true, answer: sent }
		: no(issue ?? 'unknown-option');
}

function checkInteger(question: IntegerQuestion, sent: unknown): CheckedAnswer {
	if (typeof sent !== 'string') return no('not-a-number');
	if (/^[+-]?\d*[.,]\d+$/.test(sent)) return no('not-whole');
	if (!/^[+-]?\d+$/.test(sent)) return no('not-a-number');
	const answer = Number(sent) + 0; // turns -0 into 0
	const issue = answerIssue(question, answer);
	return issue === null ? { ok: true, answer } : no(issue);
}

/** What is wrong with an answer that is already typed, or null. Wrong shapes are issues too. */
export function answerIssue(question: Question, answer: unknown): AnswerIssue | null {
	if (answer === undefined || answer === null || answer === '') return 'missing';
	if (question.kind === 'integer') return integerIssue(question, answer);
	const ids = question.options.map((option) => option.id);
	const isKnown = (tick: unknown) => typeof tick === 'string' && ids.includes(tick);
	if (question.kind === 'single') return isKnown(answer) ? null : 'unknown-option';
	if (!Array.isArray(answer)) return 'unknown-option';
	if (answer.length === 0) return 'missing';
	// Spread first: a list with holes would pass `every` with nothing ticked.
	if (![...(answer as readonly unknown[])].every(isKnown)) return 'unknown-option';
	const excludes = question.options.some(({ id, exclusive }) => exclusive && answer.includes(id));
	return excludes && new Set(answer).size > 1 ? 'exclusive-mixed' : null;
}

function integerIssue(question: IntegerQuestion, answer: unknown): AnswerIssue | null {
	if (typeof answer !== 'number' || Number.isNaN(answer)) return 'not-a-number';
	if (answer < question.lowest) return 'too-low';
	if (answer > question.highest) return 'too-high';
	return Number.isInteger(answer) ? null : 'not-whole';
}

function no(issue: AnswerIssue): CheckedAnswer {
	return { ok: false, issue };
}
