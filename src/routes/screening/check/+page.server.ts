import { fail, redirect } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { checkForm } from '$lib/forms/screening-steps.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { asksWhatChanged } from '$lib/screening/looser-than.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Answers } from '$lib/screening/types.ts';
import { decide } from '$lib/server/decide.ts';
import * as screenings from '$lib/server/screenings.ts';
import type { Actions, PageServerLoad } from './$types';
import { finish } from '../finish.ts';
import { formInProgress, needUrgentAnswer } from '../form-in-progress.ts';

export const load: PageServerLoad = async (event) => {
	const { draft, visible } = await formInProgress(event);
	needUrgentAnswer(draft, event.locals.now);
	return {
		rows: visible.map(({ id }, i) => ({ id, n: i + 1, answer: written(draft.answers[id]) })),
		last: visible.length,
		conflicts: conflictsOf(draft.answers).map((id) => ({
			id,
			field: `row-${rowOf(id, visible)}`
		}))
	};
};

export const actions: Actions = {
	default: async (event) => {
		const { house, now } = event.locals;
		// Pressed twice, or finished in another tab: there is a result already.
		const { runner, draft } = await formInProgress(event, '/screening/result');
		needUrgentAnswer(draft, now);
		const read = readForm(await event.request.formData(), checkForm);
		const decision = decide(draft.answers, draft.rulesetId);
		if (decision.kind === 'incomplete') return fail(400, { unfinished: true });
		if (!read.ok) return fail(400, { issues: read.issues });
		if (decision.kind === 'result') {
			const before = await screenings.newest(house.database, house.vault, runner.runnerId);
			const newer = { ...decision.result, completedAt: now };
			if (before !== null && asksWhatChanged(newer, before)) redirect(303, '/screening/changed');
		}
		return finish(event, runner);
	}
};

const written = (answer: Answers[string]): string[] =>
	answer === undefined ? [] : Array.isArray(answer) ? answer.map(String) : [String(answer)];

function conflictsOf(answers: Answers): readonly string[] {
	const evaluation = evaluate(currentRuleset, answers);
	return evaluation.status === 'INCOMPLETE' ? evaluation.conflicts : [];
}

/** Where to look first for a conflict: the first question that it names. */
function rowOf(conflictId: string, visible: readonly { id: string }[]): number {
	const fix = currentRuleset.conflicts.find(({ id }) => id === conflictId)?.fix ?? [];
	return visible.findIndex(({ id }) => fix.includes(id)) + 1;
}
