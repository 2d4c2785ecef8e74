import { dayAndTime } from '$words/dates.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import { needOpen } from '../../standing-of.ts';
import { unitsOf } from '../../bands/units-of.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';
import { editorActions, type Editing } from '../editor-actions.ts';
import { notFound } from '../../not-found.ts';
import { ownRules } from '../own-rules.ts';
import { ownPictureOf } from './own-picture-of.ts';

async function need(event: Pick<RequestEvent, 'locals' | 'cookies' | 'params'>) {
	const { house, runner, now, today, chosen } = await needOpen(event);
	const { database } = house;
	const rules = await ownRules(house, runner, now, today);
	const holder = { runnerId: runner.runnerId };
	const id = event.params.outing;
	const plan = /^[0-9a-z-]{1,60}$/.test(id) && (await outingPlans.find(database, holder, id));
	const unit = unitsOf(chosen.settings).speed;
	const { timeZone } = chosen;
	return { database, holder, rules, now, unit, timeZone, plan: plan || notFound() };
}

async function editing(event: Parameters<typeof need>[0]): Promise<Editing> {
	const { plan, rules, ...needed } = await need(event);
	return {
		...needed,
		base: '/outings',
		isWalking: rules.walksOnly,
		longestRunSeconds: rules.longestRunSeconds,
		planId: plan.id,
		alsoWrong: rules.alsoWrong
	};
}

export const load: PageServerLoad = async (event) => {
	const { database, holder, rules, unit, timeZone, plan } = await need(event);
	const kept = await outingPlans.versions(database, holder, plan.id);
	return {
		plan: { id: plan.id, outing: plan.outing, revision: plan.revision },
		unit,
		kinds: rules.kinds,
		longestRunSeconds: rules.longestRunSeconds,
		picture: ownPictureOf(rules),
		isKept: event.url.searchParams.has('kept'),
		versions: kept.map(({ revision, changedAt, changedByName }) => ({
			revision,
			when: dayAndTime(changedAt, timeZone),
			by: changedByName
		}))
	};
};

export const actions: Actions = {
	save: async (event) => editorActions.save(event, await editing(event)),
	press: async (event) => editorActions.press(event, await editing(event)),
	keepBoth: async (event) => editorActions.keepBoth(event, await editing(event)),
	bringBack: async (event) => editorActions.bringBack(event, await editing(event))
};
