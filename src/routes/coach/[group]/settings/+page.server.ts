import { fail, redirect } from '@sveltejs/kit';
import { deleteGroupForm, groupForm } from '$lib/forms/group.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import * as groups from '$lib/server/groups.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup, needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';
import { coachActions } from './coach-actions.ts';

export const load: PageServerLoad = async (event) => {
	const { database, coach, group, now } = await needGroup(event);
	const isOwner = group.role === 'owner';
	const links = isOwner ? await coachInvitations.list(database, coach.coachId, group.id, now) : [];
	return {
		group,
		isOwner,
		coachId: coach.coachId,
		coaches: await groupCoaches.list(database, coach.coachId, group.id),
		links: links.filter(({ state }) => state === 'open'),
		zones: isOwner ? [...Intl.supportedValuesOf('timeZone'), 'UTC'] : []
	};
};

export const actions: Actions = {
	...coachActions,
	change: async (event) => {
		const { database, coach, group } = await needOwner(event);
		const read = readForm(await event.request.formData(), groupForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const done = await groups.change(database, coach.coachId, group.id, read.value);
		if (done === 'not-found') notFound();
		return { saved: true };
	},
	delete: async (event) => {
		const { database, coach, group, now } = await needOwner(event);
		const read = readForm(await event.request.formData(), deleteGroupForm);
		if (!read.ok) return fail(400, { notSure: true });
		await groups.remove(database, coach.coachId, group.id, now);
		redirect(303, '/coach');
	}
};
