import { error, fail, redirect } from '@sveltejs/kit';
import { evaluate } from '$lib/screening/evaluate.ts';
import type { Question } from '$lib/screening/ruleset.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Answers } from '$lib/screening/types.ts';
import { checkAnswer } from '$lib/screening/validate-answer.ts';
import { visibleQuestions } from '$lib/screening/visible-questions.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as screenings from '$lib/server/screenings.ts';
import { faultText } from '$words/faults.ts';
import { notFound } from '../../../not-found.ts';
import type { Actions, PageServerLoad } from './$types';
import { formInProgress, needUrgentAnswer, URGENT_QUESTION } from '../../form-in-progress.ts';

export const load: PageServerLoad = async (event) => {
	const { draft, visible } = await formInProgress(event);
	const n = Number(event.params.n);
	if (!/^\d{1,2}$/.test(event.params.n) || n < 1) notFound();
	if (n === 1) redirect(303, '/screening');
	needUrgentAnswer(draft, event.locals.now);
	const question = visible[n - 1];
	if (question === undefined) redirect(303, '/screening/check');
	const from = event.url.searchParams.get('from') === 'check' ? 'check' : '';
	return {
		n,
		of: visible.length,
		from,
		back: back(n, from),
		question: {
			id: question.id,
			kind: question.kind,
			options: question.kind === 'integer' ? [] : question.options.map(({ id }) => id)
		},
		answer: typed(draft.answers[question.id])
	};
};

export const actions: Actions = {
	default: async (event) => {
		const { house, now } = event.locals;
		const { runner, draft, visible } = await formInProgress(event);
		const form = await event.request.formData();
		const question = visible.find(({ id }) => id === form.get('question'));
		// Another tab changed which questions are asked: show what stands here now.
		if (question === undefined) redirect(303, event.url.pathname);
		// The urgent signs have their own page, which stores them as an event.
		if (question.id === URGENT_QUESTION) redirect(303, '/screening');
		const sent = form.getAll('answer');
		const checked = checkAnswer(question, question.kind === 'multi' ? sent : single(sent));
		if (!checked.ok) {
			const kept = sent.filter((part) => typeof part === 'string').map((part) => part.slice(0, 60));
			return fail(400, { issue: checked.issue, typed: kept });
		}
		const answer = {
			questionId: question.id,
			answer: checked.answer,
			rulesetId: currentRuleset.id
		};
		const saved = await drafts.save(
			house.database,
			house.vault,
			runner.runnerId,
			{ ...answer, revision: null },
			now
		);
		const answers = saved.draft?.answers ?? {};
		if (evaluate(currentRuleset, answers).status === 'NOT_ELIGIBLE') {
			await drafts.discard(house.database, runner.runnerId);
			await screenings.invalidate(house.database, runner.runnerId, now);
			error(403, { code: 'not-eligible', message: faultText('not-eligible') });
		}
		needUrgentAnswer(draft, now);
		redirect(303, placeAfter(question, answers, form.get('from') === 'check'));
	}
};

const single = (sent: readonly unknown[]) => (sent.length > 1 ? sent : sent[0]);

const back = (n: number, from: string) => {
	if (from === 'check') return '/screening/check';
	return n === 2 ? '/screening' : `/screening/questions/${n - 1}`;
};

const typed = (answer: Answers[string]): string[] =>
	answer === undefined ? [] : Array.isArray(answer) ? answer.map(String) : [String(answer)];

/** From the check page: a follow-up that has just opened, else back. Otherwise the next question. */
function placeAfter(question: Question, answers: Answers, fromCheck: boolean): string {
	const visible = visibleQuestions(currentRuleset, answers);
	if (fromCheck) {
		const open = visible.findIndex(({ id }) => answers[id] === undefined);
		return open < 0 ? '/screening/check' : `/screening/questions/${open + 1}?from=check`;
	}
	const next = visible.findIndex(({ id }) => id === question.id) + 2;
	return next > visible.length ? '/screening/check' : `/screening/questions/${next}`;
}
