import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import * as events from '$lib/server/events.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';

/** The newest urgent sign that was not taken back, or null. */
async function standingEvent({ locals }: Pick<RequestEvent, 'locals'>) {
	const { house, runner } = locals;
	if (runner === null || house.vault.state !== 'right') return null;
	const all = await events.list(house.database, house.vault, runner.runnerId);
	return all.find(({ withdrawnAt }) => withdrawnAt === null) ?? null;
}

export const load: PageServerLoad = async ({ locals, cookies }) => {
	const { house, runner, now } = locals;
	const event = await standingEvent({ locals });
	const { emergencyNumber } = await visitor(house, runner, cookies);
	return {
		emergencyNumber,
		stored: event !== null,
		canWithdraw: event !== null && now - event.happenedAt < events.WITHDRAW_WITHIN_MS
	};
};

export const actions: Actions = {
	/** The first of two questions: it changes nothing. */
	ask: async (event) => {
		const held = await standingEvent(event);
		if (held === null) redirect(303, '/screening/emergency');
		return { ask: true };
	},
	withdraw: async (event) => {
		const { house, runner, now } = event.locals;
		const held = await standingEvent(event);
		if (held === null || runner === null) redirect(303, '/screening/emergency');
		const done = await events.withdraw(house.database, runner.runnerId, held.id, now);
		return done === 'withdrawn' ? { withdrawn: true } : fail(409, { late: true });
	}
};
