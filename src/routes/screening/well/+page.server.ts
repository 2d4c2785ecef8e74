import { fail, redirect } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { wellAgainForm } from '$lib/forms/screening-steps.ts';
import { localDate } from '$lib/screening/calendar.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import { standingOf } from '../../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
	const access = await standingOf(event);
	if (access.allowed || access.code !== 'WAIT') redirect(303, '/screening/result');
};

export const actions: Actions = {
	default: async (event) => {
		const { house, runner, now } = event.locals;
		if (runner === null) redirect(303, '/screening/result');
		const read = readForm(await event.request.formData(), wellAgainForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		// A sign after an illness is a new answer: the whole form has to look at it.
		if (read.value.signs !== 'no') {
			await screenings.invalidate(house.database, runner.runnerId, now);
			redirect(303, '/screening/result');
		}
		if (read.value.feelWell === 'no') return { note: 'stillIll' as const };
		const { timeZone } = await visitor(house, runner, event.cookies);
		const today = localDate(now, timeZone);
		const newest = await screenings.newest(house.database, house.vault, runner.runnerId);
		if (newest !== null && newest.completedOn >= today) return { note: 'sameDay' as const };
		await wellAgain.record(house.database, runner.runnerId, today, now);
		redirect(303, '/screening/result');
	}
};
