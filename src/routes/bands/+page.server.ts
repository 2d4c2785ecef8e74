import { error, redirect } from '@sveltejs/kit';
import { addDays, localDate } from '$lib/screening/calendar.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { PageServerLoad } from './$types';
import { ifMaximumOff, phaseView, pulseView } from './view.ts';
import { unitsOf } from './units-of.ts';

export const load: PageServerLoad = async ({ locals, cookies }) => {
	const { house, runner, now } = locals;
	const { access, guidance } = await effortBands.of(house, runner, now);
	if (!access.allowed || !guidance.open) {
		if ('fault' in access) error(503, { code: 'vault', message: 'vault' });
		redirect(303, '/screening/result');
	}
	const { settings, timeZone } = await visitor(house, runner, cookies);
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
		phases: guidance.phases.map((phase) => phaseView(phase, unitsOf(settings))),
		ifMaximumOff: ifMaximumOff(guidance),
		care: guidance.care
	};
};
