import { edgeExercise } from '$lib/guidance/edge.ts';
import { needGuidance } from '../../need-guidance.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	const { guidance } = await needGuidance(event);
	return { goal: edgeExercise(guidance).goal };
};
