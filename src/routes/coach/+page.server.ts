import { redirect } from '@sveltejs/kit';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as groups from '$lib/server/groups.ts';
import * as members from '$lib/server/members.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { house, coach, now } }) => {
	if (coach === null) redirect(303, '/coach/sign-in');
	const { database } = house;
	const mine = await groups.list(database, coach.coachId);
	const counts = await members.counts(database, coach.coachId);
	const rows = [];
	for (const { id, name, usualPlace, role, timeZone, isDemo } of mine) {
		const outing = await groupOutings.current(database, coach.coachId, id, now);
		const count = counts.get(id) ?? 0;
		rows.push({ id, name, usualPlace, role, timeZone, isDemo, count, until: outing?.endsAt });
	}
	return { groups: rows };
};
