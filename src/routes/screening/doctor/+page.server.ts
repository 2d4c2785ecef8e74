import { redirect } from '@sveltejs/kit';
import * as screenings from '$lib/server/screenings.ts';
import type { Access } from '$lib/screening/access.ts';
import { standingOf } from '../../standing-of.ts';
import type { PageServerLoad } from './$types';
import { loadOf } from './load-table.ts';

export const load: PageServerLoad = async (event) => {
	const { house, runner } = event.locals;
	const access = await standingOf(event);
	const newest = runner && (await screenings.newest(house.database, house.vault, runner.runnerId));
	const reasons = access.liftable.map(({ reason }) => reason);
	// An urgent sign alone has no finished form behind it, and still needs its page.
	if (newest === null && reasons.length === 0) redirect(303, '/screening/result');
	return {
		person: newest && {
			answeredOn: newest.completedOn,
			ageYears: newest.ageYears,
			activity: newest.activity,
			plan: newest.plan,
			ruleset: `${newest.rulesetId} (${newest.rulesetVersion})`
		},
		urgent: !access.allowed && access.urgent,
		reasons,
		covered: access.coveredReasons.filter((id) => !reasons.includes(id)),
		remains: whatRemains(access, reasons.length),
		load: loadOf(newest?.plan ?? 'walkrun')
	};
};

/** What advice on file leaves standing, where no reason does: a doctor reads it as a line. */
function whatRemains(access: Access, reasonCount: number) {
	if (!access.allowed) return access.closedByAdvice.length > 0 ? ('nothing-yet' as const) : null;
	if (access.walkOnlyByAdvice) return 'walking-only' as const;
	return reasonCount === 0 && access.coveredReasons.length > 0 ? ('none' as const) : null;
}
