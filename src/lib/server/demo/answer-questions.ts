import { currentRuleset } from '../../screening/rulesets/index.ts';
import type { Answer, Answers } from '../../screening/types.ts';
import { answerIssue } from '../../screening/validate-answer.ts';
import { visibleQuestions } from '../../screening/visible-questions.ts';
import { decide } from '../decide.ts';
import * as drafts from '../drafts.ts';
import * as screenings from '../screenings.ts';
import type { DemoStores } from './parts.ts';

/**
 * Answers the questions one by one, as they show, and finishes: what comes of it is what the rules
 * make of the answers.
 * @param prepared an answer to each question that will show
 * @param now when it is done
 * @throws Error where no answer, or one that the form would refuse, is prepared
 */
export async function answerQuestions(
	{ database, vault }: DemoStores,
	runnerId: string,
	prepared: Answers,
	timeZone: string,
	now: number
): Promise<void> {
	const { id: rulesetId, questions } = currentRuleset;
	const given: Record<string, Answer> = {};
	for (;;) {
		const question = visibleQuestions(currentRuleset, given).find(({ id }) => !(id in given));
		if (question === undefined) break;
		const answer = prepared[question.id];
		if (answer === undefined || answerIssue(question, answer) !== null) {
			throw new Error(`no answer is prepared for ${question.id}`);
		}
		given[question.id] = answer;
		const one = { questionId: question.id, answer, aboutNow: question === questions[0] };
		await drafts.save(database, vault, runnerId, { ...one, rulesetId, revision: null }, now);
	}
	const done = await screenings.complete(database, vault, runnerId, { decide, timeZone }, now);
	if (done.kind !== 'stored') throw new Error(`the questions came to nothing: ${done.kind}`);
}
