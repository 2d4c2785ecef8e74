import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { deviceCodeForm } from '$lib/forms/account.ts';
import { joinForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { gate } from '$lib/server/gate.ts';
import * as joining from '$lib/server/joining.ts';
import * as memberships from '$lib/server/memberships.ts';
import { saidSince } from '$lib/server/said-since.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { faultText } from '$words/faults.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, cookies }) => {
	const { house, runner, now } = locals;
	const { database, vault } = house;
	const shared = await sharedOf({ locals, params, cookies });
	if (shared === null) return { shared: null };
	const group = await joining.atTheDoor(database, shared.groupId, runner?.runnerId ?? null);
	if (group === null) return { shared: null };
	const access = await gate(house, runner, now);
	if ('fault' in access) error(503, { code: 'vault', message: faultText('vault') });
	// Somebody who came back by a code has one once they have answered again.
	const since = locals.tabletReturn?.openedAt ?? 0;
	const said = runner && (await saidSince(database, vault, runner.runnerId, since));
	return {
		shared,
		group,
		somebodyIsHere: runner !== null,
		isBack: Boolean(locals.tabletReturn),
		hasResult: said !== null
	};
};

export const actions: Actions = {
	back: async (event) => {
		const shared = await needShared(event);
		const { house, runner, now } = event.locals;
		if (runner !== null) redirect(303, `/tablet/${shared.groupId}`);
		const { code, typed, issue } = await codeOf(event.request);
		if (code === null) return fail(400, { code: issue, typed });
		const { headers } = event.request;
		const signed = await house.auth.redeemTabletReturn(shared.groupId, code, headers, now);
		if (typeof signed === 'string') return fail(400, { code: signed, typed });
		redirect(303, '/screening');
	},
	join: async (event) => {
		const shared = await needShared(event);
		const { house, runner, now } = event.locals;
		if (runner === null) redirect(303, `/tablet/${shared.groupId}`);
		const read = readForm(await event.request.formData(), joinForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { name } = read.value;
		await joining.enter(house.database, shared.groupId, runner.runnerId, name, now);
		const code = await house.auth.createTabletReturn(runner.runnerId, shared.groupId, now);
		await wipe(event);
		if (code !== null) {
			const isSecure = event.url.protocol === 'https:';
			const { groupId } = shared;
			sharedTablet.handOn(house, event.cookies, { groupId, code }, now, isSecure);
		}
		redirect(303, `/tablet/${shared.groupId}/done`);
	},
	// Leaves the group; where nothing else leads to them, clearing then deletes all that is kept.
	leave: async (event) => {
		const shared = await needShared(event);
		const { house, runner, tabletReturn, now } = event.locals;
		if (runner === null || !tabletReturn) redirect(303, `/tablet/${shared.groupId}`);
		const { code, typed, issue } = await codeOf(event.request);
		if (code === null) return fail(400, { code: issue, typed });
		const { runnerId } = runner;
		const isTheirs = await house.auth.isTabletReturnOf(runnerId, shared.groupId, code, now);
		if (isTheirs !== true) return fail(400, { code: isTheirs || 'wrong', typed });
		const mine = await memberships.list(house.database, runnerId);
		const here = mine.find(({ groupId }) => groupId === shared.groupId);
		if (here) await memberships.leave(house.database, runnerId, here.memberId, now);
		await wipe(event);
		redirect(303, `/tablet/${shared.groupId}/done?left`);
	},
	clear: async (event) => {
		const shared = await needShared(event);
		await wipe(event);
		redirect(303, `/tablet/${shared.groupId}/done`);
	},
	off: async (event) => {
		const shared = await needShared(event);
		await wipe(event);
		sharedTablet.turnOff(event.cookies);
		redirect(303, `/tablet/${shared.groupId}`);
	}
};

/** The code as it was typed, and as it counts. */
async function codeOf(request: Request) {
	const sent = await request.formData();
	const part = sent.get('code');
	const typed = typeof part === 'string' ? part.slice(0, 60) : '';
	const read = readForm(sent, deviceCodeForm);
	if (read.ok) return { code: read.value.code, typed, issue: null };
	return { code: null, typed, issue: read.issues[0]?.code ?? 'wrong' };
}

/** Everything of whoever was here is gone from this browser before the next page is drawn. */
async function wipe({ locals, request, cookies, setHeaders }: RequestEvent): Promise<void> {
	const { house, runner, now } = locals;
	await sharedTablet.clear(house, runner, { headers: request.headers, cookies }, now);
	setHeaders({ 'clear-site-data': sharedTablet.CLEAR_SITE_DATA });
}

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
