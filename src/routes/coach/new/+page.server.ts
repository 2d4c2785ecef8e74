import { fail, redirect } from '@sveltejs/kit';
import { groupForm } from '$lib/forms/group.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as groups from '$lib/server/groups.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ cookies }) => {
	const zones = [...Intl.supportedValuesOf('timeZone'), 'UTC'];
	const named = cookies.get('time_zone') ?? '';
	/** Null where nobody named one: then it is asked, and nothing stands there beforehand. */
	return { timeZone: zones.includes(named) ? named : null, zones };
};

export const actions: Actions = {
	default: async ({ request, locals: { house, coach, now } }) => {
		if (coach === null) redirect(303, '/coach/sign-in');
		const read = readForm(await request.formData(), groupForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const id = await groups.create(house.database, coach.coachId, read.value, now);
		redirect(303, `/coach/${id}`);
	}
};
