import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { bandDoubtForm } from '$lib/forms/band-doubt.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { addDays, localDate } from '$lib/screening/calendar.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';
import { doubtViews } from './doubt-view.ts';
import { setView } from './set-view.ts';
import { ifMaximumOff, phaseView, pulseView } from './view.ts';
import { unitsOf } from './units-of.ts';

async function open({ locals: { house, runner, now } }: Pick<RequestEvent, 'locals'>) {
	const { access, guidance, set } = await effortBands.of(house, runner, now);
	if (!access.allowed || !guidance.open || runner === null) {
		if ('fault' in access) error(503, { code: 'vault', message: 'vault' });
		redirect(303, '/screening/result');
	}
	return { house, runner, now, access, guidance, set };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, access, guidance, set } = await open(event);
	const { settings, timeZone } = await visitor(house, runner, event.cookies);
	const { settlingIn } = guidance;
	const heading: 'walk' | 'run' | 'talk' = !guidance.mayRun
		? 'walk'
		: access.pulse.on
			? 'run'
			: 'talk';
	return {
		name: settings.name,
		heading,
		until: access.validUntil,
		settling:
			settlingIn.kind === 'going-on'
				? {
						walks: settlingIn.walksNeeded,
						days: settlingIn.daysLeft,
						from: addDays(localDate(now, timeZone), settlingIn.daysLeft)
					}
				: null,
		pulse: pulseView(guidance.pulse),
		phases: guidance.phases.map((phase) =>
			phaseView(phase, setView(phase, set, timeZone), unitsOf(settings))
		),
		hasCoach: await bandDoubts.hasListener(house.database, runner.runnerId),
		doubts: doubtViews(await bandDoubts.ofRunner(house.database, runner.runnerId), timeZone),
		ifMaximumOff: ifMaximumOff(guidance),
		care: guidance.care
	};
};

export const actions: Actions = {
	doubt: async (event) => {
		const { house, runner, now, guidance } = await open(event);
		const read = readForm(await event.request.formData(), bandDoubtForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { phase, feels } = read.value;
		if (!guidance.phases.some(({ kind }) => kind === phase)) {
			error(404, { code: 'not-found', message: 'not-found' });
		}
		await bandDoubts.say(house.database, runner.runnerId, phase, feels, now);
		redirect(303, `/bands#${phase}-name`);
	}
};
