import { redirect } from '@sveltejs/kit';
import { talkLevels } from '$lib/physiology/effort-scale.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import { talkTest } from '$words/learn.ts';
import { phases } from '$words/phases.ts';
import { needOpen } from '../../standing-of.ts';
import type { PageServerLoad } from './$types';

/** With pulse off there is not one beat in what the page is given. Nothing is stored here. */
export const load: PageServerLoad = async (event) => {
	const { house, runner, now, today } = await needOpen(event);
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	const { pulse } = guidance;
	if (pulse.kind === 'off') return { pulseOn: false as const };
	if (pulse.kind === 'not-yet') {
		return { pulseOn: true as const, careTeamLimitBpm: access.pulse.careTeamLimitBpm, band: null };
	}
	const main = guidance.phases.find(({ kind }) => kind === 'steady-run' || kind === 'brisk-walk');
	const band = main?.pulse ?? null;
	return {
		pulseOn: true as const,
		careTeamLimitBpm: pulse.careTeamLimitBpm,
		band:
			main && band
				? {
						// Sent with the page, so that no script brings the texts of other pages.
						phaseName: phases[main.kind].name,
						talkLevels: talkLevels.map((id) => ({ id, text: talkTest.levels[id].name })),
						bpm: {
							low: band.low === null ? null : roundHalfUp(band.low.bpm),
							high: roundHalfUp(band.high.bpm)
						},
						ends: {
							restingBpm: roundHalfUp(pulse.resting.bpm),
							maximumBpm: roundHalfUp(pulse.maximum.bpm)
						}
					}
				: null
	};
};
