import { redirect } from '@sveltejs/kit';
import * as effortBands from '$lib/server/effort-bands.ts';
import { percent } from '$words/numbers.ts';
import { unitsOf } from '../../bands/units-of.ts';
import { phaseView, pulseView } from '../../bands/view.ts';
import { needOpen } from '../../standing-of.ts';
import type { PageServerLoad } from './$types';
import { workedView } from './worked-view.ts';

/** From age to band with the reader's own numbers: behind the gate, as every number of theirs is. */
export const load: PageServerLoad = async (event) => {
	const { house, runner, now, today, chosen } = await needOpen(event);
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	const { phases, pulse } = guidance;
	const asked = event.url.searchParams.get('part');
	const phase =
		phases.find(({ kind }) => kind === asked) ??
		phases.find(({ kind }) => kind === 'steady-run' || kind === 'brisk-walk') ??
		phases[0];
	if (phase === undefined) redirect(303, '/bands');
	const { reserve } = phase;
	return {
		kinds: phases.map(({ kind }) => kind),
		pulse: pulseView(pulse),
		phase: phaseView(phase, null, unitsOf(chosen.settings)),
		isSet: phase.set.by !== 'default',
		share: reserve && {
			low: reserve.low === null ? null : percent(reserve.low),
			high: percent(reserve.high)
		},
		worked: workedView(phase, pulse, access.ageYears)
	};
};
