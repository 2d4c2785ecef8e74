import type { PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';

export const load: PageServerLoad = async (event) => {
	const { group } = await needGroup(event);
	return { hasNumber: group.emergencyNumber !== null, isOwner: group.role === 'owner' };
};
