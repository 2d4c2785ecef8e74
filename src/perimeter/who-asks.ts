import type { Handle } from '@sveltejs/kit';
import { building } from '$app/environment';
import { house } from '$lib/server/house.ts';

/** Gives the request its house, its clock and its person. */
export const whoAsks: Handle = async ({ event, resolve }) => {
	if (building) return resolve(event);
	const { locals } = event;
	locals.house = await house();
	locals.now = Date.now();
	locals.runner = await locals.house.auth.session(event.request.headers);
	return resolve(event);
};
