import { error, redirect } from '@sveltejs/kit';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { gate } from '$lib/server/gate.ts';
import * as screenings from '$lib/server/screenings.ts';
import type { PageServerLoad } from './$types';
import { loadOf } from './load-table.ts';

export const load: PageServerLoad = async ({ locals: { house, runner, now } }) => {
	const access = await gate(house, runner, now);
	if ('fault' in access) error(503, { code: 'vault', message: 'vault' });
	const newest = runner && (await screenings.newest(house.database, house.vault, runner.runnerId));
	if (newest === null) redirect(303, '/screening/result');
	return {
		answeredOn: newest.completedOn,
		ageYears: newest.ageYears,
		plan: newest.plan,
		activity: newest.activity,
		urgent: !access.allowed && access.urgent,
		reasons: access.liftable.map(({ reason }) => reason),
		load: loadOf(newest.plan),
		ruleset: `${currentRuleset.id} (${currentRuleset.version})`
	};
};
