import type { Handle } from '@sveltejs/kit';
import { building } from '$app/environment';
import * as coaches from '$lib/server/coaches.ts';
import { demoOf } from '$lib/server/demo/demo.ts';
import { house } from '$lib/server/house.ts';

/** Gives the request its house, its clock and its person. */
export const whoAsks: Handle = async ({ event, resolve }) => {
	if (building) return resolve(event);
	const { locals } = event;
	locals.house = await house();
	locals.now = Date.now();
	const { runner, coach } = await locals.house.auth.asking(event.request.headers);
	locals.runner = runner;
	locals.tabletReturn = null;
	const found = coach && (await coaches.find(locals.house.database, coach.coachId));
	locals.demo = await demoOf(locals.house.database, runner?.runnerId ?? coach?.coachId ?? null);
	locals.coach = coach && found && { ...found, sessionId: coach.sessionId };
	return resolve(event);
};
