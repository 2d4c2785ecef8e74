import { error, redirect, type Handle, type RequestEvent } from '@sveltejs/kit';
import { gate } from '$lib/server/gate.ts';
import { faultText } from '$words/faults.ts';
import { isDesk, openRoutes } from './open-routes.ts';

/**
 * The door. A runner's pages stand behind the screening gate, which is asked again where personal
 * numbers are read; the coach's desk stands behind a coach's sign-in.
 */
export const openOrShut: Handle = async ({ event, resolve }) => {
	const route = event.route.id;
	if (route === null || openRoutes.has(route)) return resolve(event);
	const { locals } = event;
	if (isDesk(route)) return locals.coach ? resolve(event) : sendAway(event, '/coach/sign-in');
	const access = await gate(locals.house, locals.runner, locals.now);
	return access.allowed ? resolve(event) : sendAway(event, '/screening/result');
};

/** A page leads to the one that says why; anything else is refused without a word more. */
function sendAway({ request }: RequestEvent, to: string): never {
	if (request.method === 'GET' || request.method === 'HEAD') redirect(303, to);
	error(403, { code: 'closed', message: faultText('closed') });
}
