import { fail, redirect } from '@sveltejs/kit';
import { memberForm, removeMemberForm, stepForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { stepRefusal } from '$lib/guidance/step-refusal.ts';
import { compareDates, daysBetween, localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as groupDays from '$lib/server/group-days.ts';
import { placeOf } from '$lib/server/member-place.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as members from '$lib/server/members.ts';
import * as roster from '$lib/server/roster.ts';
import type { Actions, PageServerLoad } from './$types';
import { needMember, needOwner } from '../../need-group.ts';
import { notFound } from '../../../../not-found.ts';
import { placeView } from './place-view.ts';

export const load: PageServerLoad = async (event) => {
	const { database, vault, coach, group, member, now, today } = await needMember(event);
	const row = await roster.find(database, vault, { coach, group }, member.id, now);
	if (row === null) notFound();
	const { state, next, nextOuting } = row;
	const dayOf = (at: number) => localDate(at, group.timeZone);
	return {
		groupId: group.id,
		isOwner: group.role === 'owner',
		member: {
			id: member.id,
			name: member.name,
			addedOn: dayOf(member.addedAt),
			joinedOn: member.joinedAt === null ? null : dayOf(member.joinedAt)
		},
		state,
		next,
		nextOuting,
		stepIsKept: event.url.searchParams.has('step'),
		place: placeView(await placeOf(database, coach.coachId, group.id, member.id, today), group),
		daysLeft: state.open && state.endsSoon ? daysBetween(today, state.validUntil) : null,
		days: daysOf(
			await attendance.ofMember(database, coach.coachId, group.id, member.id),
			await groupDays.ofMember(database, coach.coachId, group.id, member.id)
		)
	};
};

/** Days on the list, and days on which only the runner's phone wrote the group's outing down. */
function daysOf(attended: readonly LocalDate[], byPhone: readonly LocalDate[]) {
	return [...new Set([...attended, ...byPhone])]
		.sort((one, other) => compareDates(other, one))
		.map((on) => ({ on, byPhoneAlone: !attended.includes(on) }));
}

export const actions: Actions = {
	rename: async (event) => {
		const { database, coach, group, member } = await needMember(event);
		const read = readForm(await event.request.formData(), memberForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name } = read.value;
		const done = await members.rename(database, coach.coachId, group.id, member.id, name);
		if (done === 'known') {
			return fail(400, { issues: [{ field: 'name', code: 'known' }], values: { name } });
		}
		return { saved: true };
	},
	step: async (event) => {
		const { database, vault, coach, group, member, now, today } = await needMember(event);
		const row = await roster.find(database, vault, { coach, group }, member.id, now);
		const place = await placeOf(database, coach.coachId, group.id, member.id, today);
		const read = readForm(await event.request.formData(), stepForm);
		if (!read.ok || row === null || place === null) notFound();
		const { to, programme: programmeId, changes } = read.value;
		const wished = place.numbered.find(({ number }) => number === to) ?? notFound();
		const refusal = stepRefusal(row.state, place.own.outing, wished.outing);
		if (refusal !== null) return fail(400, { step: { refusal, to } });
		const outingsAhead = to - place.group.number;
		const words = { memberId: member.id, outingsAhead, seen: { programmeId, changes } };
		const done = await memberSteps.set(database, coach, group.id, words, now);
		if (done === 'not-found') notFound();
		if (done === 'changed-meanwhile') return fail(409, { step: { refusal: done, to } });
		redirect(303, `/coach/${group.id}/members/${member.id}?step#place`);
	},
	remove: async (event) => {
		const { member } = await needMember(event);
		const { database, coach, group, now } = await needOwner(event);
		const read = readForm(await event.request.formData(), removeMemberForm);
		if (!read.ok) return fail(400, { notSure: true });
		await members.remove(database, coach.coachId, group.id, member.id, now);
		redirect(303, `/coach/${group.id}`);
	}
};
