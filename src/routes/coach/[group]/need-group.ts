import type { RequestEvent } from '@sveltejs/kit';
import { localDate } from '$lib/screening/calendar.ts';
import * as groups from '$lib/server/groups.ts';
import * as members from '$lib/server/members.ts';
import { notFound } from '../../not-found.ts';

type Asked = Pick<RequestEvent, 'locals' | 'params'>;

/** Ids are ours: anything else is asked of no database. */
const ID = /^[0-9a-zA-Z-]{1,60}$/;

/**
 * The group of an address for the coach who asks, with the day that it is there. A group that does
 * not exist and one that is somebody else's are the same 404. Every load and action asks anew.
 */
export async function needGroup({ locals, params }: Asked) {
	const { house, coach, now } = locals;
	const id = params['group'] ?? '';
	const group = coach && ID.test(id) && (await groups.ofCoach(house.database, coach.coachId, id));
	if (!coach || !group) notFound();
	const { database, vault } = house;
	return { house, database, vault, coach, group, now, today: localDate(now, group.timeZone) };
}

/** For what only an owner decides. To a helper it is not there. */
export async function needOwner(asked: Asked) {
	const needed = await needGroup(asked);
	if (needed.group.role !== 'owner') notFound();
	return needed;
}

/** The member of an address, in the coach's group. */
export async function needMember(asked: Asked) {
	const needed = await needGroup(asked);
	const { database, coach, group } = needed;
	const id = asked.params['member'] ?? '';
	const member = ID.test(id) && (await members.find(database, coach.coachId, group.id, id));
	if (!member) notFound();
	return { ...needed, member };
}
