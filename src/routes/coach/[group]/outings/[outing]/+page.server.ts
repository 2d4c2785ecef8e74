import { fail, redirect } from '@sveltejs/kit';
import { planDayForm } from '$lib/forms/outing-row.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { addMonths, compareDates } from '$lib/screening/calendar.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import { dayAndTime } from '$words/dates.ts';
import type { Actions, PageServerLoad } from './$types';
import { editorActions, type Editing } from '../../../../outings/editor-actions.ts';
import { needGroup } from '../../need-group.ts';
import { notFound } from '../../../../not-found.ts';
import { pictureOf } from './picture-of.ts';

type Asked = Parameters<typeof needGroup>[0];

async function need(event: Asked) {
	const needed = await needGroup(event);
	const { database, coach, group } = needed;
	const holder = { coach, groupId: group.id };
	const id = event.params['outing'] ?? '';
	const plan = /^[0-9a-z-]{1,60}$/.test(id) && (await outingPlans.find(database, holder, id));
	return { ...needed, holder, plan: plan || notFound() };
}

async function editing(event: Asked): Promise<Editing> {
	const { database, holder, group, plan, now } = await need(event);
	return {
		database,
		holder,
		now,
		base: `/coach/${group.id}/outings`,
		isWalking: false,
		longestRunSeconds: null,
		planId: plan.id,
		unit: group.units,
		timeZone: group.timeZone,
		alsoWrong: () => []
	};
}

export const load: PageServerLoad = async (event) => {
	const { house, database, coach, holder, group, plan, today, now } = await need(event);
	const kept = await outingPlans.versions(database, holder, plan.id);
	const seen = (await memberBands.list(house, coach, group.id, now)) ?? notFound();
	return {
		picture: pictureOf(seen, event.url.searchParams.get('runner')),
		plan: { id: plan.id, outing: plan.outing, revision: plan.revision },
		unit: group.units,
		today,
		isKept: event.url.searchParams.has('kept'),
		plannedFor: event.url.searchParams.get('day'),
		versions: kept.map(({ revision, changedAt, changedByName }) => ({
			revision,
			when: dayAndTime(changedAt, group.timeZone),
			by: changedByName
		}))
	};
};

export const actions: Actions = {
	save: async (event) => editorActions.save(event, await editing(event)),
	press: async (event) => editorActions.press(event, await editing(event)),
	keepBoth: async (event) => editorActions.keepBoth(event, await editing(event)),
	/** The picture of another runner, with the form as it was sent: nothing is kept. */
	draw: async (event) => {
		const { house, coach, group, now } = await need(event);
		const back = await editorActions.comeBack(event, await editing(event));
		const seen = (await memberBands.list(house, coach, group.id, now)) ?? notFound();
		return { ...back, picture: pictureOf(seen, back.chosen) };
	},
	bringBack: async (event) => editorActions.bringBack(event, await editing(event)),
	plan: async (event) => {
		const { database, coach, group, plan, today } = await need(event);
		const read = readForm(await event.request.formData(), planDayForm);
		if (!read.ok) return fail(400, { day: { code: read.issues[0]?.code ?? 'missing', typed: '' } });
		const { onDate } = read.value;
		const wrong = (code: string) => fail(400, { day: { code, typed: onDate } });
		if (compareDates(onDate, today) < 0) return wrong('in-the-past');
		if (compareDates(onDate, addMonths(today, 12)) > 0) return wrong('too-far');
		const { outing } = plan;
		const done = await plannedOutings.plan(database, coach.coachId, group.id, { onDate, outing });
		if (done.kind === 'not-found') notFound();
		if (done.kind === 'date-taken') return wrong(done.kind);
		redirect(303, `/coach/${group.id}/outings/${plan.id}?day=${onDate}`);
	}
};
