import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { deleteForm, settingsForm } from '$lib/forms/account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as account from '$lib/server/account.ts';
import * as consents from '$lib/server/consents.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as settings from '$lib/server/settings.ts';
import { CLEAR_SITE_DATA } from '$lib/server/shared-tablet.ts';
import { forgetPhone, keep, visitor } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';
import { notFound } from '../not-found.ts';
import { groupActions } from './group-actions.ts';
import { heldOf } from './held.ts';

export const load: PageServerLoad = async ({
	locals: { house, runner, now },
	cookies,
	depends
}) => {
	depends('account');
	const theme = cookies.get('theme') ?? 'system';
	const chosen = await visitor(house, runner, cookies);
	const { timeZone } = chosen;
	const emergencyNumber = await numberToCall(house, runner, chosen);
	const open = house.vault.state === 'right';
	if (runner === null) return { open, held: null, theme, emergencyNumber, timeZone, zones: [] };
	return {
		open,
		theme,
		emergencyNumber,
		timeZone,
		zones: [...Intl.supportedValuesOf('timeZone'), 'UTC'],
		held: await heldOf(house, runner.runnerId, now)
	};
};

/** Whoever has an account; anybody else is shown that there is none. */
function needRunner({ locals }: RequestEvent) {
	const { house, runner, now } = locals;
	if (runner === null) redirect(303, '/account');
	return { house, database: house.database, runner, runnerId: runner.runnerId, now };
}

export const actions: Actions = {
	...groupActions,
	settings: async (event) => {
		const { database, runnerId } = needRunner(event);
		const read = readForm(await event.request.formData(), settingsForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		const { theme, timeZone } = read.value;
		keep(event.cookies, 'theme', theme, event.url.protocol === 'https:');
		await settings.save(database, runnerId, { theme, timeZone });
		redirect(303, '/account');
	},
	code: async (event) => {
		const { house, runnerId, now } = needRunner(event);
		return { made: await house.auth.createDeviceCode(runnerId, now) };
	},
	removePasskey: async (event) => {
		const { database, runnerId, now } = needRunner(event);
		const id = (await event.request.formData()).get('id');
		const done = typeof id === 'string' && (await passkeys.remove(database, runnerId, id, now));
		if (done !== 'removed') notFound();
		redirect(303, '/account');
	},
	withdraw: async (event) => {
		const { database, runnerId, now } = needRunner(event);
		await consents.withdraw(database, runnerId, now);
		redirect(303, '/account');
	},
	delete: async (event) => {
		const { house, database, runnerId } = needRunner(event);
		const read = readForm(await event.request.formData(), deleteForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		await account.deleteAll(database, runnerId);
		await house.auth.signOut(event.request.headers);
		forgetPhone(event.cookies);
		// Also what the prompter keeps: the page has said what would be lost.
		event.setHeaders({ 'clear-site-data': CLEAR_SITE_DATA });
		redirect(303, '/account/gone');
	},
	signOut: async (event) => {
		const { house } = needRunner(event);
		await house.auth.signOut(event.request.headers);
		forgetPhone(event.cookies);
		// Also what the prompter keeps: the page has said what would be lost.
		event.setHeaders({ 'clear-site-data': CLEAR_SITE_DATA });
		redirect(303, '/');
	}
};
