import { fail, redirect } from '@sveltejs/kit';
import { deleteOutingForm } from '$lib/forms/pain.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { pastSight, shownOuting } from '$lib/guidance/shown-outing.ts';
import { localDate } from '$lib/screening/calendar.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { visitor } from '$lib/server/visitor.ts';
import * as whatNext from '$lib/server/what-next.ts';
import { unitsOf } from '../../bands/units-of.ts';
import { notFound } from '../../not-found.ts';
import { standingOf } from '../../standing-of.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';
import { nextPanel } from '../next-lines.ts';

async function need(event: Pick<RequestEvent, 'locals' | 'cookies' | 'params'>) {
	const { house, runner, now } = event.locals;
	const access = await standingOf(event);
	const { run } = event.params;
	if (runner === null || !/^[0-9a-z-]{1,60}$/i.test(run)) notFound();
	const { database, vault } = house;
	const outing = await pastOutings.of(database, vault, runner.runnerId, run);
	return { house, database, vault, runner, now, access, outing: outing ?? notFound() };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, access, outing } = await need(event);
	const { settings, timeZone } = await visitor(house, runner, event.cookies);
	const { speed: unit } = unitsOf(settings);
	const today = localDate(now, timeZone);
	const said = access.allowed ? await whatNext.of(house, runner, now, today) : null;
	const next = said?.next?.outingId === outing.id ? said.next : null;
	return {
		isOpen: access.allowed,
		onDate: outing.onDate,
		unit,
		next: next && nextPanel(next, unit),
		...shownOuting(outing, pastSight(access))
	};
};

export const actions: Actions = {
	remove: async (event) => {
		const { database, vault, runner, now, outing } = await need(event);
		const read = readForm(await event.request.formData(), deleteOutingForm);
		if (!read.ok) return fail(400, { notSure: true });
		await pastOutings.remove(database, vault, runner.runnerId, outing.id, now);
		redirect(303, '/past?deleted');
	}
};
