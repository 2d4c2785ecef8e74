import { fail } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { looserForm } from '$lib/forms/screening-steps.ts';
import * as audit from '$lib/server/audit.ts';
import type { Actions, PageServerLoad } from './$types';
import { finish } from '../finish.ts';
import { formInProgress } from '../form-in-progress.ts';

export const load: PageServerLoad = async (event) => {
	await formInProgress(event);
};

export const actions: Actions = {
	default: async (event) => {
		const { house, now } = event.locals;
		const { runner } = await formInProgress(event);
		const read = readForm(await event.request.formData(), looserForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		await audit.record(house.database, runner.runnerId, now, 'result.loosened', {
			why: read.value.why
		});
		return finish(event, runner);
	}
};
