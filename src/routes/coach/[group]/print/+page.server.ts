import * as outingPlans from '$lib/server/outing-plans.ts';
import type { PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';

export const load: PageServerLoad = async (event) => {
	const { database, coach, group } = await needGroup(event);
	const plans = await outingPlans.list(database, { coach, groupId: group.id }, () => undefined);
	return {
		outings: plans.map(({ id, outing }) => ({ id, name: outing.name })),
		hasNumber: group.emergencyNumber !== null,
		isOwner: group.role === 'owner'
	};
};
