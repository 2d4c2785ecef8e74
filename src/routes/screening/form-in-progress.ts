import { redirect, type RequestEvent } from '@sveltejs/kit';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { visibleQuestions } from '$lib/screening/visible-questions.ts';
import type { Signed } from '$lib/server/auth.ts';
import * as consents from '$lib/server/consents.ts';
import * as drafts from '$lib/server/drafts.ts';

/** An urgent answer is about "right now": older than this it is asked again. */
export const URGENT_GOOD_FOR_MS = 12 * 60 * 60 * 1000;

/** The first question of the set, asked before consent. */
export const URGENT_QUESTION = 'now.urgent';

/** Leads back to the urgent signs where the answer about them is no longer one about right now. */
export function needUrgentAnswer({ urgentAt }: drafts.Draft, now: number) {
	if (now - urgentAt > URGENT_GOOD_FOR_MS) redirect(303, '/screening');
}

/** Whoever has agreed, or null. */
export async function consentingRunner({ locals }: RequestEvent): Promise<Signed | null> {
	const { house, runner } = locals;
	if (runner === null || !(await consents.given(house.database, runner.runnerId))) return null;
	return runner;
}

/**
 * The open form of whoever asks. With one of an older rule set: back to the start.
 *
 * @param without where somebody goes who has no open form
 */
export async function formInProgress(event: RequestEvent, without = '/screening') {
	const { house, now } = event.locals;
	const runner = await consentingRunner(event);
	if (runner === null) redirect(303, '/screening');
	const draft = await drafts.load(house.database, house.vault, runner.runnerId, now);
	if (draft === null) redirect(303, without);
	if (draft.rulesetId !== currentRuleset.id) {
		await drafts.discard(house.database, runner.runnerId);
		redirect(303, '/screening');
	}
	return { runner, draft, visible: visibleQuestions(currentRuleset, draft.answers) };
}
