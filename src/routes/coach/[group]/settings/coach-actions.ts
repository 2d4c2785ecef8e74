import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { readForm } from '$lib/forms/read-form.ts';
import { coachRoleForm, rowForm } from '$lib/forms/group.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import { needGroup, needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

const settings = (groupId: string) => `/coach/${groupId}/settings#coaches`;

/** What a press about the coaches of a group does. */
export const coachActions = {
	role: async (event: RequestEvent) => {
		const { database, coach, group } = await needOwner(event);
		const read = readForm(await event.request.formData(), coachRoleForm);
		if (!read.ok) notFound();
		const { id, role } = read.value;
		return answer(
			await groupCoaches.setRole(database, coach.coachId, group.id, id, role),
			settings(group.id)
		);
	},
	dismiss: async (event: RequestEvent) => {
		const { database, coach, group } = await needOwner(event);
		const read = readForm(await event.request.formData(), rowForm);
		if (!read.ok) notFound();
		return answer(
			await groupCoaches.dismiss(database, coach.coachId, group.id, read.value.id),
			settings(group.id)
		);
	},
	leave: async (event: RequestEvent) => {
		const { database, coach, group } = await needGroup(event);
		return answer(await groupCoaches.leave(database, coach.coachId, group.id), '/coach');
	},
	inviteCoach: async (event: RequestEvent) => {
		const { database, coach, group, now } = await needOwner(event);
		const made = await coachInvitations.create(database, coach.coachId, group.id, now);
		if (made === null) notFound();
		return { coachLink: `${event.url.origin}/coach/invited/${made.token}` };
	},
	revokeCoach: async (event: RequestEvent) => {
		const { database, coach, group, now } = await needOwner(event);
		const read = readForm(await event.request.formData(), rowForm);
		if (!read.ok) notFound();
		await coachInvitations.revoke(database, coach.coachId, read.value.id, now);
		redirect(303, settings(group.id));
	}
};

function answer(done: groupCoaches.Changed, to: string) {
	if (done === 'not-found') notFound();
	if (done === 'last-owner') return fail(400, { lastOwner: true });
	redirect(303, to);
}
