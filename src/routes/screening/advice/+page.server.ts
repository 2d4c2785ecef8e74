import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { adviceForm } from '$lib/forms/advice.ts';
import { readForm, type Typed } from '$lib/forms/read-form.ts';
import type { Access } from '$lib/screening/access.ts';
import { localDate } from '$lib/screening/calendar.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { whoMayAdvise } from '$lib/screening/who-may-advise.ts';
import * as advice from '$lib/server/advice.ts';
import { visitor } from '$lib/server/visitor.ts';
import { notFound } from '../../not-found.ts';
import type { Actions, PageServerLoad } from './$types';
import { standingOf } from '../../standing-of.ts';
import { ownCoaches } from '../own-coaches.ts';
import { adviceIssues, type Coverable } from './advice-issues.ts';

async function situation(event: Pick<RequestEvent, 'locals' | 'cookies'>) {
	const { house, runner, now } = event.locals;
	if (runner === null) redirect(303, '/screening/result');
	const access = await standingOf(event);
	const { timeZone } = await visitor(house, runner, event.cookies);
	return {
		house,
		runner,
		now,
		coverable: coverableNow(access),
		timeZone,
		today: localDate(now, timeZone)
	};
}

/** Reasons that stand and somebody may cover, and those covered already: newer advice may come. */
function coverableNow(access: Access): readonly Coverable[] {
	const covered = currentRuleset.rules
		.filter((rule) => rule.does === 'outcome' || rule.does === 'pulse-off')
		.filter(({ id }) => access.coveredReasons.includes(id))
		.map((rule) => ({ reason: rule.id, roles: whoMayAdvise[rule.kind], countsFrom: null }));
	return [...access.liftable.filter(({ roles }) => roles.length > 0), ...covered];
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, coverable, timeZone, today } = await situation(event);
	const { database, vault } = house;
	const confirmed = await adviceConfirmations.ofRunner(database, runner.runnerId);
	return {
		coverable: coverable.map(({ reason, roles }) => ({ id: reason, roles })),
		coaches: await ownCoaches(event, coverable),
		today,
		held: (await advice.list(database, vault, runner.runnerId)).map((one) => ({
			...one,
			confirmedBy: confirmed
				.filter(({ adviceId }) => adviceId === one.id)
				.map(({ coachName, qualification, confirmedAt }) => ({
					coachName,
					qualification,
					on: localDate(confirmedAt, timeZone)
				}))
		}))
	};
};

export const actions: Actions = {
	record: async (event) => {
		const { house, runner, now, coverable, today } = await situation(event);
		const read = readForm(await event.request.formData(), adviceForm, ['covers']);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const issues = adviceIssues(read.value, coverable, today);
		if (issues.length > 0) {
			const { limitBpm, ...typed } = read.value;
			const values: Typed = { ...typed, limitBpm: limitBpm === null ? '' : String(limitBpm) };
			return fail(400, { issues, values });
		}
		await advice.record(house.database, house.vault, runner.runnerId, read.value, now);
		redirect(303, '/screening/result');
	},
	remove: async (event) => {
		const { house, runner, now } = await situation(event);
		const id = (await event.request.formData()).get('id');
		const done =
			typeof id === 'string' && (await advice.remove(house.database, runner.runnerId, id, now));
		if (done !== 'removed') notFound();
		redirect(303, '/screening/advice');
	}
};
