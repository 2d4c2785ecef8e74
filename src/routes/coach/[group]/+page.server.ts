import { fail, redirect } from '@sveltejs/kit';
import { attendanceForm, memberForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { daysBetween } from '$lib/screening/calendar.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as nameImport from '$lib/server/name-import.ts';
import * as roster from '$lib/server/roster.ts';
import type { Actions, PageServerLoad } from './$types';
import { askedIn, isEverybody } from './find-runners.ts';
import { markHeat } from './mark-heat.ts';
import { namesakesOf } from './namesakes.ts';
import { needGroup } from './need-group.ts';
import { notFound } from '../../not-found.ts';
import { setFor } from './set-for.ts';

export const load: PageServerLoad = async (event) => {
	const needed = await needGroup(event);
	const { database, vault, coach, group, now, today } = needed;
	const set = await setFor(needed, today);
	const rows = await roster.of(database, vault, { coach, group }, now);
	const outing = await groupOutings.current(database, coach.coachId, group.id, now);
	return {
		group,
		today,
		vaultOpen: vault.state === 'right',
		outingUntil: outing?.endsAt ?? null,
		/** Null for none, undefined where it cannot be read. */
		setName: set && set.name,
		isHot: (await hotDays.list(database, coach.coachId, group.id, today))[0] === today,
		hereCount: rows.filter(({ isHereToday }) => isHereToday).length,
		namesakes: namesakesOf(rows),
		rows: rows.map((row) => ({
			...row,
			daysLeft: row.state.open ? daysLeft(row.state, today) : null
		}))
	};
};

const daysLeft = (
	{ endsSoon, validUntil }: { endsSoon: boolean; validUntil: string },
	today: string
) => (endsSoon ? daysBetween(today, validUntil) : null);

export const actions: Actions = {
	/** Without script. A name that is looked for stands in no address. */
	find: async (event) => {
		await needGroup(event);
		return { asked: askedIn(await event.request.formData()) };
	},
	mark: async (event) => {
		const { database, coach, group, now, today } = await needGroup(event);
		const sent = await event.request.formData();
		const read = readForm(sent, attendanceForm);
		if (!read.ok) notFound();
		const { member, here } = read.value;
		const asked = askedIn(sent);
		if (here === 'no') await attendance.unmark(database, coach.coachId, group.id, member, today);
		else if (
			(await attendance.mark(database, coach.coachId, group.id, member, today, now)) !== 'marked'
		) {
			notFound();
		}
		if (!isEverybody(asked)) return { asked };
		redirect(303, `/coach/${group.id}#m-${member}`);
	},
	add: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		const read = readForm(await event.request.formData(), memberForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name } = read.value;
		const done = await nameImport.addNames(database, coach.coachId, group.id, [name], now);
		if (done.kind === 'added' && done.count === 0) {
			return fail(400, { issues: [{ field: 'name', code: 'known' }], values: { name } });
		}
		redirect(303, `/coach/${group.id}#add`);
	},
	heat: async (event) => {
		const needed = await needGroup(event);
		if ((await markHeat(needed, await event.request.formData())) === 'no') notFound();
		redirect(303, `/coach/${needed.group.id}#outing`);
	},
	start: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		const done = await groupOutings.start(database, coach.coachId, group.id, now);
		if (done.kind === 'no-emergency-number') return fail(400, { noNumber: true });
		redirect(303, `/coach/${group.id}`);
	},
	end: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		await groupOutings.end(database, coach.coachId, group.id, now);
		redirect(303, `/coach/${group.id}`);
	}
};
