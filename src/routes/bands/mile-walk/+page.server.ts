import { fail, redirect } from '@sveltejs/kit';
import type { z } from 'zod';
import { mileWalkForm } from '$lib/forms/mile-walk.ts';
import { readForm, type Issue, type Typed } from '$lib/forms/read-form.ts';
import { mileCapacity, walkedMile } from '$lib/guidance/mile-capacity.ts';
import { mileWalkOpen } from '$lib/guidance/mile-walk-open.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import { walkingPulse } from '$lib/guidance/typed-walk.ts';
import { limits } from '$lib/physiology/limits.ts';
import { kilogramsFromPounds } from '$lib/physiology/units.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as profiles from '$lib/server/profiles.ts';
import { decimal } from '$words/numbers.ts';
import { needOpen } from '../../standing-of.ts';
import { needsRestingAdvice } from '../resting-advice.ts';
import { tabOwner } from '../tab-owner.ts';
import type { Actions, PageServerLoad } from './$types';

const here = '/bands/mile-walk';

async function need(event: Parameters<typeof needOpen>[0]) {
	const open = await needOpen(event);
	const { house, runner, access } = open;
	const profile = await profiles.load(house.database, house.vault, runner.runnerId);
	const mornings = profile.mornings.map(({ bpm }) => bpm);
	const isAskedFirst = needsRestingAdvice(profile, access.coveredReasons);
	const may = mileWalkOpen(access, pulseBasis(access, { ...profile, mornings }));
	return { ...open, profile, may: isAskedFirst ? ('pulse-off' as const) : may };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, access, chosen, profile, may } = await need(event);
	if (may !== 'open') return { may, open: null };
	const { weightKilograms, sex } = profile;
	return {
		may,
		open: {
			ageYears: access.ageYears,
			/** What the profile knows; nobody has to have said it. */
			known: { weight: weightKilograms === null ? '' : String(weightKilograms), sex: sex ?? '' },
			emergencyNumber: await numberToCall(house, runner, chosen),
			tabOwner: tabOwner(runner.runnerId),
			wasKept: event.url.searchParams.has('kept'),
			kept: keptView(profile.mileWalk, access.ageYears)
		}
	};
};

export const actions: Actions = {
	add: async (event) => {
		const { house, runner, now, access, today, may } = await need(event);
		if (may !== 'open') redirect(303, here);
		const read = readForm(await event.request.formData(), mileWalkForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { mile, issues } = mileOf(read.value, access.ageYears);
		if (issues.length > 0) return fail(400, { issues, values: typedOf(read.value) });
		const changed = (before: profiles.Profile) => ({ ...before, mileWalk: { on: today, ...mile } });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, `${here}?kept`);
	},
	remove: async (event) => {
		const { house, runner, now } = await needOpen(event);
		const changed = (before: profiles.Profile) => ({ ...before, mileWalk: null });
		await profiles.change(house.database, house.vault, runner.runnerId, changed, now);
		redirect(303, here);
	}
};

type Sent = z.output<typeof mileWalkForm>;

/** The walk as it is stored, and what in it cannot be. */
function mileOf({ weight, weightUnit, sex, time, read, pulse }: Sent, ageYears: number) {
	const issues: Issue[] = [];
	const weightKilograms = weightUnit === 'lb' ? kilogramsFromPounds(weight) : weight;
	const { low, high } = limits.weightKilograms.plausible;
	if (weightKilograms < low) issues.push({ field: 'weight', code: 'weight-too-low' });
	if (weightKilograms > high) issues.push({ field: 'weight', code: 'weight-too-high' });
	const beats = walkingPulse(pulse, read);
	if (!beats.ok) issues.push({ field: 'pulse', code: beats.code });
	const mile = { weightKilograms, sex, minutes: time, pulseBpm: beats.ok ? beats.bpm : 0 };
	if (issues.length > 0) return { mile, issues };
	const answer = mileCapacity(walkedMile(mile), ageYears);
	if (answer.kind === 'capacity') return { mile, issues };
	const { code, field } = answer.reasons[0]!;
	return { mile, issues: [{ field: field === 'pulseBpm' ? 'pulse' : 'time', code }] };
}

function typedOf({ weight, sex, time, pulse, ...rest }: Sent): Typed {
	const seconds = Math.round(time * 60);
	const clock = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
	const numbers = { weight: String(weight), time: clock, pulse: String(pulse) };
	return { ...rest, ...numbers, sex: sex ?? 'none' };
}

function keptView(kept: profiles.Profile['mileWalk'], ageYears: number) {
	if (kept === null) return null;
	const answer = mileCapacity(walkedMile(kept), ageYears);
	if (answer.kind === 'refused') return { on: kept.on, capacity: null, isLower: false };
	const { mlPerKgPerMinute, spread } = answer.capacity;
	const capacity = { value: decimal(mlPerKgPerMinute, 0), spread: decimal(spread, 1) };
	return { on: kept.on, capacity, isLower: kept.sex === null };
}
