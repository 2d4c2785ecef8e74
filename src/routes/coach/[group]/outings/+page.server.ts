import * as outingPlans from '$lib/server/outing-plans.ts';
import type { Actions, PageServerLoad } from './$types';
import { libraryActions, libraryView } from '../../../outings/library-actions.ts';
import { needGroup } from '../need-group.ts';

async function holderOf(event: Parameters<typeof needGroup>[0]) {
	const { database, coach, group, now } = await needGroup(event);
	const holder = { coach, groupId: group.id };
	return {
		database,
		holder,
		now,
		base: `/coach/${group.id}/outings`,
		isWalking: false,
		longestRunSeconds: null
	};
}

export const load: PageServerLoad = async (event) => {
	const { database, coach, group } = await needGroup(event);
	const plans = await outingPlans.list(database, { coach, groupId: group.id });
	return libraryView(plans, event.url, group.timeZone);
};

export const actions: Actions = {
	make: async (event) => libraryActions.make(event, await holderOf(event)),
	copy: async (event) => libraryActions.copy(event, await holderOf(event)),
	remove: async (event) => libraryActions.remove(event, await holderOf(event)),
	putBack: async (event) => libraryActions.putBack(event, await holderOf(event))
};
