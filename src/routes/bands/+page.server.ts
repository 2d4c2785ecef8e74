import { fail, redirect } from '@sveltejs/kit';
import { addDays, isLocalDate } from '$lib/screening/calendar.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as walks from '$lib/server/walks.ts';
import { needOpen } from '../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';
import { unitsOf } from './units-of.ts';
import { ifMaximumOff, phaseView, pulseView } from './view.ts';

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, chosen, today } = await needOpen(event);
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	const { settings } = chosen;
	const { settlingIn } = guidance;
	const isSettling = settlingIn.kind === 'going-on';
	return {
		name: settings.name,
		heading: headingFor(guidance.mayRun, isSettling, access.pulse.on),
		until: access.validUntil,
		plansToWalk: access.status === 'CLEARED_ALL' && !access.run,
		settling: isSettling
			? {
					walks: settlingIn.walksNeeded,
					days: settlingIn.daysLeft,
					from: addDays(today, settlingIn.daysLeft),
					walked: await walks.list(house.database, runner.runnerId),
					today
				}
			: null,
		pulse: pulseView(guidance.pulse),
		phases: guidance.phases.map((phase) => phaseView(phase, unitsOf(settings))),
		ifMaximumOff: ifMaximumOff(guidance),
		care: guidance.care
	};
};

export const actions: Actions = {
	walked: async (event) => {
		const { house, runner, now, today } = await needOpen(event);
		await walks.record(house.database, runner.runnerId, today, now);
		redirect(303, '/bands');
	},
	notWalked: async (event) => {
		const { house, runner } = await needOpen(event);
		const on = (await event.request.formData()).get('on');
		if (!isLocalDate(on)) return fail(400, { issue: 'not-a-date' });
		await walks.remove(house.database, runner.runnerId, on);
		redirect(303, '/bands');
	}
};

function headingFor(
	mayRun: boolean,
	isSettling: boolean,
	pulseOn: boolean
): 'walk' | 'settling' | 'run' | 'talk' {
	if (!mayRun) return 'walk';
	if (isSettling) return 'settling';
	return pulseOn ? 'run' : 'talk';
}
