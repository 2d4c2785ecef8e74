import { fail, redirect } from '@sveltejs/kit';
import type { z } from 'zod';
import { deleteGroupForm, groupForm } from '$lib/forms/group.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import * as groups from '$lib/server/groups.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup, needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';
import { coachActions } from './coach-actions.ts';
import { mergeFields } from './merge-fields.ts';

export const load: PageServerLoad = async (event) => {
	const { database, coach, group, now } = await needGroup(event);
	const isOwner = group.role === 'owner';
	const links = isOwner ? await coachInvitations.list(database, coach.coachId, group.id, now) : [];
	return {
		group,
		seen: seenOf(group),
		isOwner,
		coachId: coach.coachId,
		coaches: await groupCoaches.list(database, coach.coachId, group.id),
		links: links.filter(({ state }) => state === 'open'),
		zones: isOwner ? [...Intl.supportedValuesOf('timeZone'), 'UTC'] : []
	};
};

type Fields = z.infer<typeof groupForm>;

/** What the form holds of a group. */
function fieldsOf(group: groups.GroupOf): Fields {
	const { name, usualPlace, timeZone, units, paceUnits } = group;
	const { emergencyNumber, meetingPoint, defibrillator, firstAider } = group;
	const help = { emergencyNumber, meetingPoint, defibrillator, firstAider };
	return { name, usualPlace, timeZone, units, paceUnits, ...help };
}

const seenOf = (group: groups.GroupOf) => JSON.stringify(fieldsOf(group));

export const actions: Actions = {
	...coachActions,
	change: async (event) => {
		const { database, coach, group } = await needOwner(event);
		const sent = await event.request.formData();
		const seen = sent.get('seen');
		const read = readForm(sent, groupForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values, seen });
		const { fields, conflicts } = mergeFields(seen, read.value, fieldsOf(group));
		if (conflicts.length > 0) {
			const issues = conflicts.map((field) => ({ field, code: 'changed-meanwhile' }));
			return fail(409, { issues, values: { ...fields }, seen: seenOf(group) });
		}
		const done = await groups.change(database, coach.coachId, group.id, fields);
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
