import { fail } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { looserForm } from '$lib/forms/screening-steps.ts';
import * as audit from '$lib/server/audit.ts';
import type { Actions, PageServerLoad } from './$types';
import { finish } from '../finish.ts';
import { formInProgress, needUrgentAnswer } from '../form-in-progress.ts';

export const load: PageServerLoad = async (event) => {
	const { draft } = await formInProgress(event);
	needUrgentAnswer(draft, event.locals.now);
};

export const actions: Actions = {
	default: async (event) => {
		const { house, now } = event.locals;
		const { runner, draft } = await formInProgress(event, '/screening/result');
		needUrgentAnswer(draft, now);
		const read = readForm(await event.request.formData(), looserForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		await audit.record(house.database, runner.runnerId, now, 'result.loosened');
		return finish(event, runner);
	}
};
