import * as nextOutings from '$lib/server/next-outings.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import { Unreadable } from '$lib/server/vault.ts';
import type { PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';

export const load: PageServerLoad = async (event) => {
	const { database, coach, group, today } = await needGroup(event);
	const next = await nextOutings
		.nextDay(database, coach.coachId, group.id, today)
		.catch(nullIfUnreadable);
	const plans = await outingPlans.list(database, { coach, groupId: group.id }, () => undefined);
	return {
		next: next && { onDate: next.onDate, name: next.outing.name },
		outings: plans.map(({ id, outing }) => ({ id, name: outing.name })),
		hasNumber: group.emergencyNumber !== null,
		isOwner: group.role === 'owner'
	};
};

/** What cannot be read takes no paper away but its own. */
function nullIfUnreadable(error: unknown): null {
	if (error instanceof Unreadable) return null;
	throw error;
}
