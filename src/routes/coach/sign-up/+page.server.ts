import { fail, redirect } from '@sveltejs/kit';
import { signUpForm } from '$lib/forms/coach-account.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import type { Actions, PageServerLoad } from './$types';
import { fromOf, readCoachForm } from '../read-coach-form.ts';
import { afterSignUp } from '../after-sign-up.ts';

export const load: PageServerLoad = async ({ locals: { house, coach, runner } }) => {
	if (coach) redirect(303, '/coach');
	return { way: await houseSettings.signUp(house.database), runnerHere: runner !== null };
};

export const actions: Actions = {
	default: async (event) => {
		const read = await readCoachForm(event, signUpForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { auth } = event.locals.house;
		const answer = await auth.signUpCoach(read.value, null, fromOf(event));
		return afterSignUp(answer, read.value);
	}
};
