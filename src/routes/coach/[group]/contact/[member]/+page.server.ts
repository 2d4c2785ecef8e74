import * as contacts from '$lib/server/contacts.ts';
import type { PageServerLoad } from './$types';
import { needMember } from '../../need-group.ts';
import { notFound } from '../../../../not-found.ts';

export const load: PageServerLoad = async (event) => {
	const { database, vault, coach, group, member, now } = await needMember(event);
	const found = await contacts.forCoach(database, vault, { coach, group }, member.id, now);
	if (found === null) notFound();
	return { ...found, groupId: group.id, emergencyNumber: group.emergencyNumber };
};
