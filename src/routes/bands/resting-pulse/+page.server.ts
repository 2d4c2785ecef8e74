import { fail, redirect } from '@sveltejs/kit';
import { morningForm } from '$lib/forms/morning.ts';
import { readForm, type Typed } from '$lib/forms/read-form.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import { limits } from '$lib/physiology/limits.ts';
import { pulseFromCount } from '$lib/physiology/pulse-count.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import { addMonths, compareDates } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import * as profiles from '$lib/server/profiles.ts';
import { decimal } from '$words/numbers.ts';
import { needOpen } from '../../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';

/** Older mornings than this say little about today. Our own choice, no source. */
const MONTHS_BACK = 3;

export const load: PageServerLoad = async (event) => {
	const { house, runner, access, today } = await needOpen(event);
	if (!access.pulse.on) {
		const state = access.pulse.reasons.every((id) => id === 'H-REST') ? 'ask-first' : 'off';
		return { state, today, mean: null, mornings: [] };
	}
	const profile = await profiles.load(house.database, house.vault, runner.runnerId);
	const mornings = profile.mornings.map(({ bpm }) => bpm);
	const basis = pulseBasis(access, { ...profile, mornings });
	return {
		state: basis.kind === 'not-yet' ? basis.why : basis.kind === 'on' ? 'known' : 'ask-first',
		today,
		mean:
			basis.kind === 'on'
				? {
						bpm: roundHalfUp(basis.resting.bpm, 0),
						spread: decimal(basis.resting.spreadBpm, 1),
						mornings: basis.resting.mornings
					}
				: null,
		mornings: profile.mornings.map(({ bpm, on, method }) => ({ bpm, on, seconds: Number(method) }))
	};
};

export const actions: Actions = {
	add: async (event) => {
		const { house, runner, now, access, today } = await needOpen(event);
		if (!access.pulse.on) redirect(303, '/bands/resting-pulse');
		const read = readForm(await event.request.formData(), morningForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { beats, seconds, on } = read.value;
		const bpm = pulseFromCount(beats, seconds);
		const issue = dateIssue(on, today) ?? pulseIssue(bpm);
		if (issue !== null) {
			const values: Typed = { beats: String(beats), seconds: String(seconds), on };
			return fail(400, { issues: [issue], values });
		}
		await profiles.change(
			house.database,
			house.vault,
			runner.runnerId,
			(before) => profiles.withMorning(before, { bpm, on, method: seconds }),
			now
		);
		redirect(303, '/bands/resting-pulse');
	},
	remove: async (event) => {
		const { house, runner, now } = await needOpen(event);
		const on = (await event.request.formData()).get('on');
		await profiles.change(
			house.database,
			house.vault,
			runner.runnerId,
			(before) => ({
				...before,
				mornings: before.mornings.filter((morning) => morning.on !== on)
			}),
			now
		);
		redirect(303, '/bands/resting-pulse');
	}
};

function dateIssue(on: LocalDate, today: LocalDate) {
	if (compareDates(on, today) > 0) return { field: 'on', code: 'in-the-future' };
	if (compareDates(on, addMonths(today, -MONTHS_BACK)) < 0)
		return { field: 'on', code: 'too-long-ago' };
	return null;
}

function pulseIssue(bpm: number) {
	const { low, high } = limits.restingBpm.plausible;
	if (bpm < low) return { field: 'beats', code: 'too-low' };
	return bpm > high ? { field: 'beats', code: 'too-high' } : null;
}
