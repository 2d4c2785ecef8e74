import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import type { Signed } from '$lib/server/auth.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { checkAnswer } from '$lib/screening/validate-answer.ts';
import { visibleQuestions } from '$lib/screening/visible-questions.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as events from '$lib/server/events.ts';
import { gate } from '$lib/server/gate.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';
import { faultText } from '$words/faults.ts';
import type { Actions, PageServerLoad } from './$types';
import { numberFor } from '../number-for.ts';
import { consentingRunner, URGENT_GOOD_FOR_MS, URGENT_QUESTION } from './form-in-progress.ts';

const urgent = currentRuleset.questions.find(({ id }) => id === URGENT_QUESTION);
if (urgent === undefined || urgent.kind !== 'multi') {
	throw new TypeError('the rule set begins with the urgent signs');
}
const question = urgent;
const NONE = 'none';

/** For how long "none of these" is carried, in a cookie, from here to the consent. */
const CARRIED_SECONDS = 30 * 60;

export const load: PageServerLoad = async (event) => {
	const { house, runner, now } = event.locals;
	const draft =
		(await consentingRunner(event)) && runner && house.vault.state === 'right'
			? await drafts.load(house.database, house.vault, runner.runnerId, now)
			: null;
	return {
		options: question.options.map(({ id }) => id),
		of: visibleQuestions(currentRuleset, draft?.answers ?? {}).length,
		emergencyNumber: await numberFor(event),
		/** Whether a form is open already, and its urgent answer is too old to count. */
		resumed: draft !== null,
		endsResult: draft === null && (await mayEndResult(event)),
		askedAgain: draft !== null && now - draft.urgentAt > URGENT_GOOD_FOR_MS
	};
};

/** Whoever came back by a code of a tablet reads the same, whatever their result is. */
const mayEndResult = async ({ locals: { house, runner, tabletReturn, now } }: RequestEvent) =>
	tabletReturn !== null || (await gate(house, runner, now)).allowed;

export const actions: Actions = {
	answer: async (event) => {
		const { house, now } = event.locals;
		const sent = (await event.request.formData()).getAll('urgent');
		const ids = question.options.map(({ id }) => id);
		const signs = sent.filter(
			(part): part is string => typeof part === 'string' && part !== NONE && ids.includes(part)
		);
		const runner = await consentingRunner(event);
		// A sign wins over everything, also over "none of these" ticked beside it.
		if (signs.length > 0) {
			await keepThatThereWasASign(event, runner);
			event.cookies.delete('no_urgent_sign', { path: '/screening' });
			redirect(303, '/screening/emergency');
		}
		const checked = checkAnswer(question, sent);
		if (!checked.ok) return fail(400, { issue: checked.issue });
		if (house.vault.state !== 'right') error(503, { code: 'vault', message: faultText('vault') });
		if (runner === null) {
			event.cookies.set('no_urgent_sign', String(now), {
				path: '/screening',
				maxAge: CARRIED_SECONDS,
				httpOnly: true,
				sameSite: 'lax',
				secure: event.url.protocol === 'https:'
			});
			redirect(303, '/screening/consent');
		}
		const answer = { questionId: URGENT_QUESTION, answer: [NONE], aboutNow: true };
		const saved = await drafts.save(
			house.database,
			house.vault,
			runner.runnerId,
			{ ...answer, rulesetId: currentRuleset.id, revision: null },
			now
		);
		redirect(303, placeToGoOn(saved.draft?.answers ?? {}));
	}
};

/**
 * With consent it is kept that there was a sign, and not which. Where nothing about health may be
 * kept, the result ends all the same: that says nothing about health.
 */
async function keepThatThereWasASign(event: RequestEvent, consenting: Signed | null) {
	const { house, runner, now } = event.locals;
	if (runner === null) return;
	const { database, vault } = house;
	if (consenting === null || vault.state !== 'right') {
		await screenings.invalidate(database, runner.runnerId, now);
		return;
	}
	const { timeZone } = await visitor(house, runner, event.cookies);
	const said = { source: 'questions', signs: [], happenedAt: now, timeZone } as const;
	await events.record(database, vault, runner.runnerId, said, now);
	await drafts.discard(database, runner.runnerId);
}

/** The first question that is still open, or the check page. */
function placeToGoOn(answers: drafts.Draft['answers']): string {
	const visible = visibleQuestions(currentRuleset, answers);
	const open = visible.findIndex(({ id }) => answers[id] === undefined);
	return open < 0 ? '/screening/check' : `/screening/questions/${open + 1}`;
}
