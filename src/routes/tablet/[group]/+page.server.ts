import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { joinForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { gate } from '$lib/server/gate.ts';
import * as joining from '$lib/server/joining.ts';
import * as screenings from '$lib/server/screenings.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { faultText } from '$words/faults.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, cookies }) => {
	const { house, runner, now } = locals;
	const shared = await sharedOf({ locals, params, cookies });
	if (shared === null) return { shared: null };
	const group = await joining.atTheDoor(house.database, shared.groupId, runner?.runnerId ?? null);
	if (group === null) return { shared: null };
	const access = await gate(house, runner, now);
	if ('fault' in access) error(503, { code: 'vault', message: faultText('vault') });
	const newest = runner && (await screenings.newest(house.database, house.vault, runner.runnerId));
	return {
		shared,
		group,
		somebodyIsHere: runner !== null,
		hasResult: newest !== null
	};
};

export const actions: Actions = {
	join: async (event) => {
		const shared = await needShared(event);
		const { house, runner, now } = event.locals;
		if (runner === null) redirect(303, `/tablet/${shared.groupId}`);
		const read = readForm(await event.request.formData(), joinForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name } = read.value;
		await joining.enter(house.database, shared.groupId, runner.runnerId, name, now);
		return cleared(event, shared.groupId);
	},
	clear: async (event) => {
		const shared = await needShared(event);
		return cleared(event, shared.groupId);
	},
	off: async (event) => {
		const shared = await needShared(event);
		await sharedTablet.clear(
			event.locals.house,
			event.locals.runner,
			held(event),
			event.locals.now
		);
		sharedTablet.turnOff(event.cookies);
		event.setHeaders({ 'clear-site-data': sharedTablet.CLEAR_SITE_DATA });
		redirect(303, `/tablet/${shared.groupId}`);
	}
};

/** Everything of whoever was here is gone from this browser before the next page is drawn. */
async function cleared(event: RequestEvent, groupId: string): Promise<never> {
	const { house, runner, now } = event.locals;
	await sharedTablet.clear(house, runner, held(event), now);
	event.setHeaders({ 'clear-site-data': sharedTablet.CLEAR_SITE_DATA });
	redirect(303, `/tablet/${groupId}/done`);
}

const held = ({ request, cookies }: RequestEvent) => ({ headers: request.headers, cookies });

/** The group that this browser is shared for, if it is the one of the address. */
async function sharedOf({
	locals,
	params,
	cookies
}: Pick<RequestEvent, 'locals' | 'params' | 'cookies'>) {
	if (locals.coach !== null) return null;
	const shared = await sharedTablet.of(locals.house, cookies, locals.now);
	return shared?.groupId === params['group'] ? shared : null;
}

async function needShared(event: RequestEvent) {
	const shared = await sharedOf(event);
	if (shared === null) error(404, { code: 'not-found', message: faultText('not-found') });
	return shared;
}
