import { fail, redirect } from '@sveltejs/kit';
import { invitationForm, rowForm } from '$lib/forms/group.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { addDays } from '$lib/screening/calendar.ts';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import { qrCode } from '$lib/server/qr-code.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup, needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

const USUAL_DAYS = 28;

export const load: PageServerLoad = async (event) => {
	const { database, coach, group, now, today } = await needGroup(event);
	const all = await groupInvitations.list(database, coach.coachId, group.id, now);
	return {
		group: { id: group.id, name: group.name },
		isOwner: group.role === 'owner',
		today,
		endsOn: addDays(today, USUAL_DAYS),
		open: all.filter(({ state }) => state === 'open').map((one) => shown(one, event.url.origin)),
		past: all
			.filter(({ state }) => state !== 'open')
			.map(({ id, endsOn, state }) => ({ id, endsOn, state }))
	};
};

function shown({ id, token, endsOn }: groupInvitations.GroupInvitation, origin: string) {
	const link = `${origin}/join/${token}`;
	return { id, endsOn, link, code: qrCode(link) };
}

export const actions: Actions = {
	make: async (event) => {
		const { database, coach, group, now } = await needOwner(event);
		const read = readForm(await event.request.formData(), invitationForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { endsOn } = read.value;
		const made = await groupInvitations.create(database, coach.coachId, group.id, endsOn, now);
		if (made.kind === 'not-found') notFound();
		if (made.kind !== 'created') {
			return fail(400, { issues: [{ field: 'endsOn', code: made.kind }], values: { endsOn } });
		}
		redirect(303, `/coach/${group.id}/invite`);
	},
	revoke: async (event) => {
		const { database, coach, group, now } = await needOwner(event);
		const read = readForm(await event.request.formData(), rowForm);
		if (!read.ok) notFound();
		const { id } = read.value;
		const done = await groupInvitations.revoke(database, coach.coachId, group.id, id, now);
		if (done === 'not-found') notFound();
		redirect(303, `/coach/${group.id}/invite`);
	},
	tablet: async (event) => {
		const { house, coach, group, now } = await needGroup(event);
		const { cookies, url } = event;
		const isSecure = url.protocol === 'https:';
		await sharedTablet.turnOn(house, cookies, coach, group.id, now, isSecure);
		await house.auth.signOut(event.request.headers);
		redirect(303, `/tablet/${group.id}`);
	}
};
