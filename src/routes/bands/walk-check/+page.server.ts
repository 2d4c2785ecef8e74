import { fail, redirect } from '@sveltejs/kit';
import { readForm, type Typed } from '$lib/forms/read-form.ts';
import { walkCheckForm } from '$lib/forms/walk-check.ts';
import { maximumOf } from '$lib/guidance/pulse-basis.ts';
import { limits } from '$lib/physiology/limits.ts';
import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromKmPerHour,
	metresPerMinuteFromMilesPerHour
} from '$lib/physiology/units.ts';
import { walkCheck } from '$lib/physiology/walk-check.ts';
import * as profiles from '$lib/server/profiles.ts';
import { decimal } from '$words/dates.ts';
import { needOpen } from '../../standing-of.ts';
import { unitsOf } from '../units-of.ts';
import type { Actions, PageServerLoad } from './$types';

const here = '/bands/walk-check';

export const load: PageServerLoad = async (event) => {
	const { house, runner, access, chosen } = await needOpen(event);
	const unit = unitsOf(chosen.settings).speed;
	const profile = await profiles.load(house.database, house.vault, runner.runnerId);
	const isOff = !access.pulse.on || needsAdvice(profile, access.coveredReasons);
	if (isOff) return { isOff, unit, limitBpm: null, kept: null };
	const limitBpm = access.pulse.careTeamLimitBpm;
	if (profile.walkCheck === null) return { isOff, unit, limitBpm, kept: null };
	const { on, walks } = profile.walkCheck;
	const answer = walkCheck(walks, maximumOf(access, profile));
	if (answer.kind === 'refused') return { isOff, unit, limitBpm, kept: { on, capacity: null } };
	const { mlPerKgPerMinute, spread } = answer.capacity;
	const capacity = { value: decimal(mlPerKgPerMinute, 0), spread: decimal(spread, 1) };
	return { isOff, unit, limitBpm, kept: { on, capacity } };
};

export const actions: Actions = {
	add: async (event) => {
		const { house, runner, now, access, today, chosen } = await needOpen(event);
		const profile = await profiles.load(house.database, house.vault, runner.runnerId);
		if (!access.pulse.on || needsAdvice(profile, access.coveredReasons)) redirect(303, here);
		const read = readForm(await event.request.formData(), walkCheckForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const toMetres =
			unitsOf(chosen.settings).speed === 'mph'
				? metresPerMinuteFromMilesPerHour
				: metresPerMinuteFromKmPerHour;
		const sent = read.value;
		const walks = [
			{ speedMetresPerMinute: toMetres(sent.speed1), grade: 0, pulseBpm: sent.pulse1 },
			{ speedMetresPerMinute: toMetres(sent.speed2), grade: 0, pulseBpm: sent.pulse2 },
			{ speedMetresPerMinute: toMetres(sent.speed3), grade: 0, pulseBpm: sent.pulse3 }
		];
		const answer = walkCheck(walks, maximumOf(access, profile));
		const issues = [
			...walks.flatMap(({ speedMetresPerMinute }, nth) =>
				isWalk(speedMetresPerMinute) ? [] : [{ field: `speed${nth + 1}`, code: 'too-high' }]
			),
			...(answer.kind === 'refused' ? [{ field: 'pulse3', code: answer.reasons[0]!.code }] : [])
		];
		if (issues.length > 0) {
			const values: Typed = Object.fromEntries(
				Object.entries(sent).map(([field, value]) => [field, String(value)])
			);
			return fail(400, { issues, values });
		}
		const changed = (before: profiles.Profile) => ({ ...before, walkCheck: { on: today, walks } });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, here);
	},
	remove: async (event) => {
		const { house, runner, now } = await needOpen(event);
		const changed = (before: profiles.Profile) => ({ ...before, walkCheck: null });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, here);
	}
};

/** Two mornings out of range turn the pulse off until somebody looked at it. */
function needsAdvice(profile: profiles.Profile, covered: readonly string[]): boolean {
	return profile.restingAskFirstSince !== null && !covered.includes('H-REST');
}

function isWalk(speedMetresPerMinute: number): boolean {
	const { high } = limits.walkingSpeedKmPerHour.valid;
	return kmPerHourFromMetresPerMinute(speedMetresPerMinute) <= high;
}
