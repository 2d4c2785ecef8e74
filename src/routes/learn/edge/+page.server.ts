import { fail } from '@sveltejs/kit';
import { edgeForm } from '$lib/forms/learn.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { edgeExercise, edgeStep } from '$lib/guidance/edge.ts';
import { beatsIn } from '$lib/physiology/pulse-count.ts';
import { needGuidance } from '../need-guidance.ts';
import type { Actions, PageServerLoad } from './$types';
import { numberFor } from '../../number-for.ts';

export const load: PageServerLoad = async (event) => {
	const { guidance } = await needGuidance(event);
	const { goal, stretches, highestBpm } = edgeExercise(guidance);
	return {
		goal,
		stretches,
		/** Not rounded up: the next beat would be over it. */
		highest:
			highestBpm === null
				? null
				: { bpm: Math.floor(highestBpm), count15: Math.floor(beatsIn(15, highestBpm)) },
		emergencyNumber: await numberFor(event)
	};
};

export const actions: Actions = {
	/** Nothing is stored: a page that is left forgets it. */
	answer: async (event) => {
		const exercise = edgeExercise((await needGuidance(event)).guidance);
		const read = readForm(await event.request.formData(), edgeForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values, step: null });
		const { stretch, talk, effort } = read.value;
		const at = Math.min(stretch, exercise.stretches.length - 1);
		return { issues: [], values: {}, step: edgeStep(exercise, at, talk, effort) };
	}
};
