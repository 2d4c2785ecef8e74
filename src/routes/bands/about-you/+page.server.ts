import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { aboutYouForm } from '$lib/forms/about-you.ts';
import { readForm, type Typed } from '$lib/forms/read-form.ts';
import { limits } from '$lib/physiology/limits.ts';
import { jacksonCapacity } from '$lib/physiology/questions-capacity.ts';
import { restingFromMornings } from '$lib/physiology/resting.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as settings from '$lib/server/settings.ts';
import { decimal } from '$words/numbers.ts';
import type { Actions, PageServerLoad } from './$types';
import { needOpen } from '../../standing-of.ts';
import { unitsOf } from '../units-of.ts';

async function openProfile(event: Pick<RequestEvent, 'locals' | 'cookies'>) {
	const open = await needOpen(event);
	const { house, runner } = open;
	return { ...open, profile: await profiles.load(house.database, house.vault, runner.runnerId) };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, access, profile } = await openProfile(event);
	const kept = await settings.load(house.database, runner.runnerId);
	const units = unitsOf(kept);
	const text = (value: number | null) => (value === null ? '' : String(value));
	const values: Record<string, string> = {
		name: kept.name ?? '',
		speedUnits: units.speed,
		paceUnits: units.pace,
		sex: profile.sex ?? 'none',
		heightCentimetres: text(profile.heightCentimetres),
		weightKilograms: text(profile.weightKilograms),
		activityLevel: text(profile.activityLevel),
		supervisedMaximumBpm: access.pulse.on ? text(profile.supervisedMaximumBpm) : '',
		supervisedCapacity: text(profile.supervisedCapacity)
	};
	return { pulseOn: access.pulse.on, fitness: fitness(profile, access.ageYears), values };
};

export const actions: Actions = {
	default: async (event) => {
		const { house, runner, now, access, profile } = await openProfile(event);
		const read = readForm(await event.request.formData(), aboutYouForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name, speedUnits, paceUnits, ...about } = read.value;
		// With pulse off the field is not shown: what was kept of it stays.
		const supervisedMaximumBpm = access.pulse.on
			? about.supervisedMaximumBpm
			: profile.supervisedMaximumBpm;
		if (supervisedMaximumBpm !== null && isTooLow(supervisedMaximumBpm, profile)) {
			const issues = [{ field: 'supervisedMaximumBpm', code: 'under-resting' }];
			const typed = Object.entries({
				...about,
				sex: about.sex ?? 'none',
				name,
				speedUnits,
				paceUnits
			});
			const values: Typed = Object.fromEntries(
				typed.map(([field, value]) => [field, String(value ?? '')])
			);
			return fail(400, { issues, values });
		}
		await profiles.change(
			house.database,
			house.vault,
			runner.runnerId,
			(before) => ({ ...before, ...about, supervisedMaximumBpm }),
			now
		);
		await settings.save(house.database, runner.runnerId, {
			name,
			units: speedUnits,
			paceUnits
		});
		redirect(303, '/bands');
	}
};

/** A maximum that leaves no room above the resting pulse is a slip of the finger in one of the two. */
function isTooLow(maximumBpm: number, { mornings }: profiles.Profile): boolean {
	const resting = restingFromMornings(mornings.map(({ bpm }) => bpm));
	if (resting.kind !== 'known') return false;
	return maximumBpm - resting.resting.bpm < limits.reserveBpm.plausible.low;
}

function fitness(profile: profiles.Profile, ageYears: number) {
	const { sex, heightCentimetres, weightKilograms, activityLevel } = profile;
	if (sex === null || heightCentimetres === null || weightKilograms === null) return null;
	if (activityLevel === null) return null;
	const answer = jacksonCapacity({
		sex: sex === 'woman' ? 'female' : 'male',
		ageYears,
		bodyMassIndex: weightKilograms / (heightCentimetres / 100) ** 2,
		activityLevel
	});
	if (answer.kind !== 'capacity') return null;
	const { mlPerKgPerMinute, spread } = answer.capacity;
	return { value: decimal(mlPerKgPerMinute, 0), spread: decimal(spread, 1) };
}
