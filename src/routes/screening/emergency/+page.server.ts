import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import * as events from '$lib/server/events.ts';
import type { Actions, PageServerLoad } from './$types';
import { numberFor } from '../../number-for.ts';

type Asked = Pick<RequestEvent, 'locals' | 'cookies'>;

/**
 * The urgent signs that were not taken back. Pressed twice, a form leaves two. Whatever cannot be
 * read is none: this page has to show the numbers to call.
 */
async function standingEvents({ locals }: Asked) {
	const { house, runner, tabletReturn } = locals;
	if (runner === null) return [];
	try {
		const all = await events.list(house.database, house.vault, runner.runnerId);
		const since = tabletReturn?.openedAt ?? 0;
		return all.filter(({ withdrawnAt, happenedAt }) => withdrawnAt === null && happenedAt >= since);
	} catch {
		return [];
	}
}

async function numberOr(event: Asked) {
	try {
		return await numberFor(event);
	} catch {
		return null;
	}
}

export const load: PageServerLoad = async (event) => {
	const held = await standingEvents(event);
	const earliest = event.locals.now - events.WITHDRAW_WITHIN_MS;
	return {
		emergencyNumber: await numberOr(event),
		stored: held.length > 0,
		canWithdraw: held.some(({ happenedAt }) => happenedAt > earliest)
	};
};

export const actions: Actions = {
	/** The first of two questions: it changes nothing. */
	ask: async (event) => {
		const held = await standingEvents(event);
		if (held.length === 0) redirect(303, '/screening/emergency');
		return { ask: true };
	},
	withdraw: async (event) => {
		const { house, runner, now } = event.locals;
		const held = await standingEvents(event);
		if (held.length === 0 || runner === null) redirect(303, '/screening/emergency');
		const done = [];
		for (const { id } of held) {
			done.push(await events.withdraw(house.database, runner.runnerId, id, now));
		}
		return done.every((one) => one === 'withdrawn')
			? { withdrawn: true }
			: fail(409, { late: true });
	}
};
