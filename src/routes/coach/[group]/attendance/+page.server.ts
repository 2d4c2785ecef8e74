import { fail, redirect } from '@sveltejs/kit';
import { attendanceForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { compareDates, isLocalDate } from '$lib/screening/calendar.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as groupDays from '$lib/server/group-days.ts';
import * as members from '$lib/server/members.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

export const load: PageServerLoad = async (event) => {
	const { database, coach, group, today } = await needGroup(event);
	const asked = event.url.searchParams.get('on');
	const issue = asked === null ? null : issueOf(asked, today);
	const day = asked !== null && issue === null ? asked : today;
	const present = await members.list(database, coach.coachId, group.id);
	const there = await attendance.list(database, coach.coachId, group.id, day);
	const byPhone = await groupDays.membersOn(database, coach.coachId, group.id, day);
	const isThere = new Set(there.map(({ memberId }) => memberId));
	const isPresent = new Set(present.map(({ id }) => id));
	const all = await attendance.list(database, coach.coachId, group.id);
	return {
		groupId: group.id,
		today,
		day,
		issue,
		rows: present.map(({ id, name }) => ({
			id,
			name,
			isThere: isThere.has(id),
			byPhone: byPhone.has(id)
		})),
		gone: there
			.filter(({ memberId }) => memberId === null || !isPresent.has(memberId))
			.map(({ name }) => name),
		days: [...Map.groupBy(all, ({ onDate }) => onDate)].map(([on, those]) => ({
			on,
			count: those.length
		}))
	};
};

function issueOf(day: string, today: string): string | null {
	if (!isLocalDate(day)) return 'not-a-date';
	return compareDates(day, today) > 0 ? 'in-the-future' : null;
}

export const actions: Actions = {
	mark: async (event) => {
		const { database, coach, group, now, today } = await needGroup(event);
		const day = event.url.searchParams.get('on') ?? today;
		const issue = issueOf(day, today);
		if (issue !== null) return fail(400, { issue });
		const read = readForm(await event.request.formData(), attendanceForm);
		if (!read.ok) notFound();
		const { member, here } = read.value;
		if (here === 'no') await attendance.unmark(database, coach.coachId, group.id, member, day);
		else if (
			(await attendance.mark(database, coach.coachId, group.id, member, day, now)) !== 'marked'
		) {
			notFound();
		}
		redirect(303, `/coach/${group.id}/attendance?on=${day}#m-${member}`);
	}
};
