import { addDays, type LocalDate } from '../../calendar/local-date.ts';
import * as groupInvitations from '../group-invitations.ts';
import * as groups from '../groups.ts';
import { noonOf, type DemoStores } from './parts.ts';
import type { DemoWords } from './words.ts';

/** Where Lantern Street is. */
export const DEMO_ZONE = 'Europe/Dublin';
/** The emergency number of that place. */
export const DEMO_EMERGENCY = '112';

/** For how many days the group has been there. */
export const DEMO_DAYS = 30;
const LINK_DAYS = 120;

/** The group, and the link by which its runners join. */
export async function makeGroup(
	{ database }: DemoStores,
	coachId: string,
	words: DemoWords['group'],
	begun: LocalDate
): Promise<{ readonly groupId: string; readonly token: string }> {
	const fields: groups.GroupFields = {
		...words,
		timeZone: DEMO_ZONE,
		units: 'km/h',
		paceUnits: 'min/km',
		emergencyNumber: DEMO_EMERGENCY
	};
	const groupId = await groups.create(database, coachId, fields, noonOf(begun));
	const endsOn = addDays(begun, LINK_DAYS);
	const link = await groupInvitations.create(database, coachId, groupId, endsOn, noonOf(begun));
	if (link.kind !== 'created') throw new Error(`no link to the made-up group: ${link.kind}`);
	return { groupId, token: link.invitation.token };
}
