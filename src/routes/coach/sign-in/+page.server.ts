import { fail, redirect } from '@sveltejs/kit';
import { signInForm } from '$lib/forms/coach-account.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import type { Actions, PageServerLoad } from './$types';
import { fromOf, readCoachForm } from '../read-coach-form.ts';

export const load: PageServerLoad = async ({ locals: { house, coach, runner }, url }) => {
	if (coach) redirect(303, '/coach');
	const way = await houseSettings.signUp(house.database);
	// Nobody is a coach here yet: there is nobody to sign in.
	if (way === 'first') redirect(303, '/coach/sign-up');
	return {
		note: url.searchParams.get('note') ?? '',
		runnerHere: runner !== null,
		mayCome: way === 'open'
	};
};

export const actions: Actions = {
	default: async (event) => {
		const read = await readCoachForm(event, signInForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { email, password, stay } = read.value;
		const { auth } = event.locals.house;
		const signed = await auth.signInCoach({ email, password, stay: stay === 'yes' }, fromOf(event));
		if (typeof signed === 'object') redirect(303, '/coach');
		const status = signed === 'too-many' ? 429 : 400;
		return fail(status, { refused: signed, issues: [], values: { email, stay: stay ?? '' } });
	}
};
