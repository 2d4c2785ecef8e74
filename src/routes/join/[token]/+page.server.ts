import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { joinForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as joining from '$lib/server/joining.ts';
import * as settings from '$lib/server/settings.ts';
import { forgetInvitation, keepInvitation } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';
import { notFound } from '../../not-found.ts';

export const load: PageServerLoad = async ({ locals, params, cookies, url }) => {
	const { house, runner, coach, now } = locals;
	const { database } = house;
	const seen = await joining.look(database, params.token, runner?.runnerId ?? null, now);
	if (seen.state === 'unknown') notFound();
	const who = coach ? ('coach' as const) : runner ? ('runner' as const) : ('nobody' as const);
	if (seen.state !== 'open') {
		forgetInvitation(cookies);
		return { group: null, who };
	}
	const isIn = seen.group.member !== null;
	// Somebody without an account answers the questions first, and comes back by this.
	if (isIn || coach) forgetInvitation(cookies);
	else keepInvitation(cookies, params.token, url.protocol === 'https:');
	return {
		group: seen.group,
		who,
		name: runner ? (await settings.load(database, runner.runnerId)).name : null,
		hasJoined: url.searchParams.has('done')
	};
};

export const actions: Actions = {
	default: async (event: RequestEvent) => {
		const { house, runner, now } = event.locals;
		const token = event.params['token'] ?? '';
		if (runner === null) redirect(303, `/join/${token}`);
		const read = readForm(await event.request.formData(), joinForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name } = read.value;
		const joined = await joining.join(house.database, token, runner.runnerId, name, now);
		if (joined.kind === 'unknown') notFound();
		if (!('memberId' in joined)) redirect(303, `/join/${token}`);
		forgetInvitation(event.cookies);
		redirect(303, `/join/${token}?done`);
	}
};
