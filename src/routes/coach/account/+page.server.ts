import { redirect } from '@sveltejs/kit';
import * as audit from '$lib/server/audit.ts';
import * as invitations from '$lib/server/coach-invitations.ts';
import { onlyOwnerOf } from '$lib/server/coach-leaving.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as hosting from '$lib/server/hosting.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import type { House } from '$lib/server/open-house.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as sessions from '$lib/server/sessions.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { PageServerLoad } from './$types';

export { actions } from './actions.ts';

export const load: PageServerLoad = async ({ locals, cookies, depends, url }) => {
	depends('coach-account');
	const { house, coach, now } = locals;
	if (coach === null) redirect(303, '/coach/sign-in');
	const { database } = house;
	const { coachId, sessionId, name, qualification, isHost } = coach;
	const devices = await sessions.list(database, coachId, now);
	return {
		kept: url.searchParams.get('kept') ?? '',
		coach: { name, qualification, isHost },
		email: (await coaches.emailOf(database, coachId)) ?? '',
		timeZone: (await visitor(house, null, cookies)).timeZone,
		devices: devices.map((device) => ({ ...device, isThis: device.id === sessionId })),
		passkeys: await passkeys.list(database, coachId),
		history: await audit.list(database, coachId),
		onlyOwnerOf: await onlyOwnerOf(database, coachId),
		house: isHost ? await hostsPart(house, coachId, now) : null
	};
};

async function hostsPart({ database }: House, coachId: string, now: number) {
	return {
		signUp: await houseSettings.signUp(database),
		invitations: await invitations.list(database, coachId, null, now),
		heirs: await hosting.heirs(database, coachId)
	};
}
