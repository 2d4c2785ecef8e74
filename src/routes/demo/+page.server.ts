import { redirect } from '@sveltejs/kit';
import { demoUsers } from '$lib/server/demo/demo.ts';
import { loadDemo } from '$lib/server/demo/load.ts';
import { mayChange, mayLoad } from '$lib/server/demo/may-change.ts';
import { DEMO_COACH, demoPeople } from '$lib/server/demo/people.ts';
import { demoPlaces } from '$lib/server/demo/places.ts';
import { removeDemo } from '$lib/server/demo/remove.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { forgetPhone } from '$lib/server/visitor.ts';
import { lanternStreet } from '$words/demo.ts';
import type { Actions, PageServerLoad } from './$types';
import { END, goTo, leave } from './on-tour.ts';
import { tour } from './tour.ts';
import { notFound } from '../not-found.ts';

/** In a house with real people, and in an empty one that others can reach, this is not there. */
export const load: PageServerLoad = async (event) => {
	const { demo, house } = event.locals;
	if (!demo) {
		if (!(await mayLoad(house, event))) notFound();
		return { here: null };
	}
	const present = await demoUsers(house.database);
	const hasGroup = (await demoPlaces(house.database)) !== null;
	return {
		here: {
			isWhole: demo.state === 'whole',
			as: demo.as,
			mayRemove: mayChange(house, event),
			people: demoPeople.filter((one) => present.has(one)),
			steps: hasGroup ? tour.filter(({ as }) => present.has(as)).map(({ id }) => id) : []
		},
		isTurnedAway: event.url.searchParams.has('only')
	};
};

export const actions: Actions = {
	load: async (event) => {
		const { house, now } = event.locals;
		if (await mayLoad(house, event)) await loadDemo(house, lanternStreet, now);
		// Pressed twice, it is there already; where somebody real is, nothing is.
		if (!(await house.auth.lookAs(DEMO_COACH, event.request.headers))) notFound();
		redirect(303, '/demo');
	},
	look: async ({ locals: { house }, cookies, request, url }) => {
		const form = await request.formData();
		const step = tour.find(({ id }) => id === form.get('step'));
		const isEnd = form.get('step') === END;
		const person = isEnd ? DEMO_COACH : (step?.as ?? form.get('as'));
		if (typeof person !== 'string' || !(await house.auth.lookAs(person, request.headers)))
			notFound();
		if (step) goTo(cookies, step.id, url.protocol === 'https:');
		else leave(cookies);
		if (isEnd) redirect(303, '/demo');
		const places = await demoPlaces(house.database);
		if (step) redirect(303, places === null ? '/demo' : step.path(places));
		redirect(303, person === DEMO_COACH ? (places?.group ?? '/coach') : '/bands');
	},
	remove: async (event) => {
		const { cookies, request, setHeaders } = event;
		const { demo, house, runner, coach } = event.locals;
		const isRealHere = demo?.as === null && (runner ?? coach) !== null;
		if (!demo || isRealHere || !mayChange(house, event)) notFound();
		await removeDemo(house.database);
		await house.auth.signOut(request.headers);
		sharedTablet.turnOff(cookies);
		forgetPhone(cookies);
		leave(cookies);
		// Also what the prompter keeps in this browser of whoever was looked at.
		setHeaders({ 'clear-site-data': sharedTablet.CLEAR_SITE_DATA });
		redirect(303, '/');
	}
};
