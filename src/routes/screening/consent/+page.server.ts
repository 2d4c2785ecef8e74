import { error, fail, redirect } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { consentForm } from '$lib/forms/screening-steps.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import * as consents from '$lib/server/consents.ts';
import * as drafts from '$lib/server/drafts.ts';
import { visitor } from '$lib/server/visitor.ts';
import * as settings from '$lib/server/settings.ts';
import { faultText } from '$words/faults.ts';
import type { Actions, PageServerLoad } from './$types';
import { consentingRunner, URGENT_QUESTION } from '../form-in-progress.ts';

export const load: PageServerLoad = async (event) => {
	if (event.cookies.get('no_urgent_sign') === undefined) redirect(303, '/screening');
	if (await consentingRunner(event)) redirect(303, '/screening');
};

export const actions: Actions = {
	default: async (event) => {
		const { house, now } = event.locals;
		const read = readForm(await event.request.formData(), consentForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		if (event.cookies.get('no_urgent_sign') === undefined) redirect(303, '/screening');
		// Nobody becomes a runner, or loses the account of this phone, where nothing can be kept.
		if (house.vault.state !== 'right') error(503, { code: 'vault', message: faultText('vault') });
		const chosen = await visitor(house, event.locals.runner, event.cookies);
		const runner = await house.auth.signInAnonymous(event.request.headers);
		await consents.give(house.database, runner.runnerId, now);
		await settings.save(house.database, runner.runnerId, {
			timeZone: chosen.timeZone,
			...(chosen.chosenNumber === null ? {} : { emergencyNumber: chosen.chosenNumber })
		});
		const answer = { questionId: URGENT_QUESTION, answer: ['none'], aboutNow: true };
		await drafts.save(
			house.database,
			house.vault,
			runner.runnerId,
			{ ...answer, rulesetId: currentRuleset.id, revision: null },
			now
		);
		event.cookies.delete('no_urgent_sign', { path: '/screening' });
		redirect(303, '/screening/questions/2');
	}
};
