import { fail } from '@sveltejs/kit';
import { oneBreathForm } from '$lib/forms/learn.ts';
import { readForm, type Typed } from '$lib/forms/read-form.ts';
import { edgeExercise } from '$lib/guidance/edge.ts';
import { breathAnswer } from '$lib/guidance/one-breath.ts';
import { percent } from '$words/numbers.ts';
import { needGuidance } from '../../need-guidance.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	await needGuidance(event);
	return {};
};

export const actions: Actions = {
	/** Nothing is stored. */
	default: async (event) => {
		const { guidance } = await needGuidance(event);
		const read = readForm(await event.request.formData(), oneBreathForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values, answer: null });
		const { rest, moving } = read.value;
		const values: Typed = { rest: String(rest), moving: String(moving) };
		if (moving > rest) {
			const issues = [{ field: 'moving', code: 'over-rest' }];
			return fail(400, { issues, values, answer: null });
		}
		const { goal } = edgeExercise(guidance);
		const { share, effort, aim } = breathAnswer(moving, rest, goal === 'comfortable');
		return {
			issues: [],
			values,
			answer: {
				rest,
				moving,
				share: percent(share),
				effort,
				// Whole counts that lie in it. At rest three is so few that none may: then the one above.
				low: Math.ceil(aim.low),
				high: aim.high === null ? null : Math.max(Math.ceil(aim.low), Math.floor(aim.high))
			}
		};
	}
};
