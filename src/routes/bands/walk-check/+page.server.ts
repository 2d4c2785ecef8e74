import { fail, redirect } from '@sveltejs/kit';
import type { z } from 'zod';
import { readForm, type Issue, type Typed } from '$lib/forms/read-form.ts';
import { walkCheckForm } from '$lib/forms/walk-check.ts';
import { maximumOf } from '$lib/guidance/pulse-basis.ts';
import { walkingPulse, walkingSpeed, type SpeedUnit } from '$lib/guidance/typed-walk.ts';
import { walkCheck } from '$lib/physiology/walk-check.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as profiles from '$lib/server/profiles.ts';
import { decimal } from '$words/numbers.ts';
import { needOpen } from '../../standing-of.ts';
import { needsRestingAdvice } from '../resting-advice.ts';
import { tabOwner } from '../tab-owner.ts';
import { unitsOf } from '../units-of.ts';
import type { Actions, PageServerLoad } from './$types';

const here = '/bands/walk-check';

export const load: PageServerLoad = async (event) => {
	const { house, runner, access, chosen } = await needOpen(event);
	const profile = await profiles.load(house.database, house.vault, runner.runnerId);
	const isOff = !access.pulse.on || needsRestingAdvice(profile, access.coveredReasons);
	const page = {
		isOff,
		unit: unitsOf(chosen.settings).speed,
		limitBpm: isOff ? null : access.pulse.careTeamLimitBpm,
		emergencyNumber: await numberToCall(house, runner, chosen),
		tabOwner: tabOwner(runner.runnerId),
		wasKept: event.url.searchParams.has('kept')
	};
	if (isOff || profile.walkCheck === null) return { ...page, kept: null };
	const { on, walks } = profile.walkCheck;
	const answer = walkCheck(walks, maximumOf(access, profile));
	if (answer.kind === 'refused') return { ...page, kept: { on, capacity: null } };
	const { mlPerKgPerMinute, spread } = answer.capacity;
	const capacity = { value: decimal(mlPerKgPerMinute, 0), spread: decimal(spread, 1) };
	return { ...page, kept: { on, capacity } };
};

export const actions: Actions = {
	add: async (event) => {
		const { house, runner, now, access, today, chosen } = await needOpen(event);
		const profile = await profiles.load(house.database, house.vault, runner.runnerId);
		if (!access.pulse.on || needsRestingAdvice(profile, access.coveredReasons)) redirect(303, here);
		const read = readForm(await event.request.formData(), walkCheckForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { walks, wrong } = walksOf(read.value, unitsOf(chosen.settings).speed);
		const answer = walkCheck(walks, maximumOf(access, profile));
		const issues =
			wrong.length === 0 && answer.kind === 'refused'
				? [{ field: 'pulse3', code: answer.reasons[0]!.code }]
				: wrong;
		if (issues.length > 0) {
			const values: Typed = Object.fromEntries(
				Object.entries(read.value).map(([field, value]) => [field, String(value)])
			);
			return fail(400, { issues, values });
		}
		const changed = (before: profiles.Profile) => ({ ...before, walkCheck: { on: today, walks } });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, `${here}?kept`);
	},
	remove: async (event) => {
		const { house, runner, now } = await needOpen(event);
		const changed = (before: profiles.Profile) => ({ ...before, walkCheck: null });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, here);
	}
};

/** The walks as they are stored, and what nobody walks or what no pulse is. */
function walksOf(sent: z.output<typeof walkCheckForm>, unit: SpeedUnit) {
	const wrong: Issue[] = [];
	const typed = [
		{ speed: sent.speed1, beats: sent.pulse1 },
		{ speed: sent.speed2, beats: sent.pulse2 },
		{ speed: sent.speed3, beats: sent.pulse3 }
	];
	const walks = typed.map(({ speed, beats }, index) => {
		const speedMetresPerMinute = walkingSpeed(speed, unit);
		const pulse = walkingPulse(beats, sent.read);
		if (speedMetresPerMinute === null) wrong.push({ field: `speed${index + 1}`, code: 'too-high' });
		if (!pulse.ok) wrong.push({ field: `pulse${index + 1}`, code: pulse.code });
		return {
			speedMetresPerMinute: speedMetresPerMinute ?? 0,
			grade: 0,
			pulseBpm: pulse.ok ? pulse.bpm : 0
		};
	});
	return { walks, wrong };
}
