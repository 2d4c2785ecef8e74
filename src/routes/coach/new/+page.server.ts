import { fail, redirect } from '@sveltejs/kit';
import { groupForm } from '$lib/forms/group.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as groups from '$lib/server/groups.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, cookies }) => {
	const { timeZone } = await visitor(locals.house, null, cookies);
	return { timeZone, zones: [...Intl.supportedValuesOf('timeZone'), 'UTC'] };
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
