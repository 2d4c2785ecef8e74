import type { LayoutServerLoad } from './$types';
import { needGroup } from './need-group.ts';

/** What the head of each page of a group shows. It is no gate: every page asks for itself. */
export const load: LayoutServerLoad = async (event) => {
	const { group } = await needGroup(event);
	const { id, name, isDemo, emergencyNumber, role } = group;
	const hasNumber = emergencyNumber !== null;
	return { desk: { id, name, isDemo, hasNumber, isOwner: role === 'owner' } };
};
