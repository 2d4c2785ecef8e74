import { redirect } from '@sveltejs/kit';
import * as screenings from '$lib/server/screenings.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	if (locals.runner === null) redirect(303, '/screening/result');
};

export const actions: Actions = {
	default: async ({ locals: { house, runner, now } }) => {
		if (runner !== null) await screenings.invalidate(house.database, runner.runnerId, now);
		redirect(303, '/screening');
	}
};
