import { addMonths } from '$lib/screening/calendar.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as movedOutings from '$lib/server/moved-outings.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import { needOpen } from '../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';
import { libraryActions, libraryView, type Library } from './library-actions.ts';
import { ownRules } from './own-rules.ts';

type Asked = Parameters<typeof needOpen>[0];

async function library(event: Asked): Promise<Library> {
	const { house, runner, now, today } = await needOpen(event);
	const rules = await ownRules(house, runner, now, today);
	return {
		database: house.database,
		holder: { runnerId: runner.runnerId },
		now,
		base: '/outings',
		isWalking: rules.walksOnly,
		longestRunSeconds: rules.longestRunSeconds
	};
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, today, chosen } = await needOpen(event);
	const { asDone } = await ownRules(house, runner, now, today);
	const holder = { runnerId: runner.runnerId };
	const plans = await outingPlans.list(house.database, holder);
	const own = plans.map((plan) => ({ ...plan, ...asDone(plan.outing) }));
	const until = addMonths(today, 3);
	const coming = await plannedOutings.forRunner(house, runner, today, until, { now, today });
	const hot = await hotDays.ofRunner(house.database, runner.runnerId, { from: today, until });
	return {
		today,
		moved: await movedOutings.forRunner(house.database, runner.runnerId, today, until),
		coming: coming
			.filter(({ state }) => state === 'planned')
			.map(({ id, groupName, onDate, outing, walksInstead, shortenedToSeconds }) => ({
				id,
				groupName,
				onDate,
				outing,
				walksInstead,
				shortenedToSeconds,
				isHot: hot.includes(onDate)
			})),
		/** Groups whose outings are kept back. */
		waiting: await plannedOutings.waitingForNumber(house.database, runner.runnerId, today, until),
		/** What is other in the runner's own outings, as they are shown, than it was written. */
		ownWalksInstead: own.some(({ walksInstead }) => walksInstead),
		ownShortenedTo: own.find((one) => one.shortenedToSeconds !== null)?.shortenedToSeconds ?? null,
		...libraryView(own, event.url, chosen.timeZone)
	};
};

export const actions: Actions = {
	make: async (event) => libraryActions.make(event, await library(event)),
	copy: async (event) => libraryActions.copy(event, await library(event)),
	remove: async (event) => libraryActions.remove(event, await library(event)),
	putBack: async (event) => libraryActions.putBack(event, await library(event))
};
