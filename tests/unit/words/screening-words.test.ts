import { describe, expect, test } from 'vitest';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { answerIssues, answerIssuesByQuestion, answerIssueText } from '$words/answer-issues.ts';
import { questions } from '$words/questions-2026-11.ts';
import { careNotes, conflicts, gates, reasons } from '$words/reasons-2026-11.ts';
import { readingGrade, sentencesOf } from './reading-grade.ts';

/**
 * School years that a reader may need, for the hardest single sentence. Grade 6 is reading age 11
 * to 12; 8 leaves room for words such as "medicine" and "blood pressure" that no plain word
 * replaces. Common practice, no source for the exact limit.
 */
const HARDEST_SENTENCE_GRADE = 8;
/** For a question with its help, its reason and its answers, read as a whole. */
const WHOLE_QUESTION_GRADE = 6;

const ruleIds = (isNote: boolean) =>
	currentRuleset.rules.filter(({ does }) => (does === 'advice') === isNote).map(({ id }) => id);
const idsOf = (things: readonly { id: string }[]) => things.map(({ id }) => id);

describe('text stands for every id, and no text stands for an id that is gone', () => {
	test.each([
		['questions', questions, idsOf(currentRuleset.questions)],
		['reasons', reasons, ruleIds(false)],
		['care notes', careNotes, ruleIds(true)],
		['conflicts', conflicts, idsOf(currentRuleset.conflicts)],
		['gates', gates, idsOf(currentRuleset.gates)]
	])('%s', (_, words, ids) => {
		expect(Object.keys(words).sort()).toEqual([...ids].sort());
	});

	test.each(currentRuleset.questions)('the answers of $id', (question) => {
		const ids = question.kind === 'integer' ? [] : idsOf(question.options);
		expect(Object.keys(questions[question.id]?.options ?? {})).toEqual(ids);
	});

	test('questions that have messages of their own exist', () => {
		const ids = idsOf(currentRuleset.questions);
		expect(Object.keys(answerIssuesByQuestion).filter((id) => !ids.includes(id))).toEqual([]);
	});
});

test.each(Object.entries(questions))('%s says in one to three sentences why we ask', (_, words) => {
	const sentences = sentencesOf(words.why).length;
	expect(sentences).toBeGreaterThanOrEqual(1);
	expect(sentences).toBeLessThanOrEqual(3);
});

test.each(Object.entries(careNotes))('the care note %s has two to four sentences', (_, note) => {
	expect(sentencesOf(note).length).toBeGreaterThanOrEqual(2);
	expect(sentencesOf(note).length).toBeLessThanOrEqual(4);
});

describe(`no sentence needs more than grade ${HARDEST_SENTENCE_GRADE}`, () => {
	const hardest = (text: string) => Math.max(...sentencesOf(text).map(readingGrade));

	test.each(Object.entries(questions))('question %s', (_, { text, help, why }) => {
		for (const part of [text, help ?? text, why]) {
			expect(hardest(part), part).toBeLessThanOrEqual(HARDEST_SENTENCE_GRADE);
		}
	});

	test.each(Object.entries({ ...reasons, ...careNotes, ...conflicts, ...gates }))(
		'reason %s',
		(_, text) => {
			expect(hardest(text), text).toBeLessThanOrEqual(HARDEST_SENTENCE_GRADE);
		}
	);

	test('messages about answers', () => {
		const own = Object.values(answerIssuesByQuestion).flatMap((words) => Object.values(words));
		for (const text of [...Object.values(answerIssues), ...own]) {
			expect(hardest(text), text).toBeLessThanOrEqual(HARDEST_SENTENCE_GRADE);
		}
	});
});

test.each(Object.entries(questions))(
	`question %s as a whole needs no more than grade ${WHOLE_QUESTION_GRADE}`,
	(_, { text, help, why, options }) => {
		const answers = Object.values(options).map((answer) => `${answer}.`);
		const whole = [text, help ?? '', why, ...answers].join(' ');
		expect(readingGrade(whole)).toBeLessThanOrEqual(WHOLE_QUESTION_GRADE);
	}
);

describe('how it speaks', () => {
	const all = JSON.stringify({ questions, reasons, careNotes, conflicts, gates, answerIssues });

	test('without exclamation marks', () => {
		expect(all).not.toContain('!');
	});

	test('without a word that another word stands for', () => {
		expect(all).not.toMatch(/\b(workout|zone|threshold|clearance|cleared|readiness|failed)\b/i);
	});

	test('without a hint at the answer that opens the gate', () => {
		expect(all).not.toMatch(/\b(to continue|to go on|to start|in order to)\b/i);
	});
});

describe('messages about answers say what to change', () => {
	test('a missing age asks for whole years and gives an example', () => {
		const age = { id: 'age.years', kind: 'integer' } as const;
		expect(answerIssueText(age, 'missing')).toBe('Type your age in whole years, such as 46.');
		expect(answerIssueText(age, 'not-whole')).toContain('46');
		expect(answerIssueText(age, 'too-high')).toContain('120');
	});

	test('a list without a tick asks for a tick, and "None of these" counts as one', () => {
		const list = { id: 'signs.other', kind: 'multi' } as const;
		expect(answerIssueText(list, 'missing')).toContain('None of these');
	});

	test.each(currentRuleset.questions)('every issue of $id has a message', (question) => {
		for (const issue of Object.keys(answerIssues) as (keyof typeof answerIssues)[]) {
			expect(answerIssueText(question, issue)).not.toBe('');
		}
	});
});
