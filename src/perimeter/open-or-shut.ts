import { error, redirect, type Handle, type RequestEvent } from '@sveltejs/kit';
import { gate } from '$lib/server/gate.ts';
import { faultText } from '$words/faults.ts';
import { openRoutes } from './open-routes.ts';

/** The screening gate at the door. It is asked again where personal numbers are read. */
export const openOrShut: Handle = async ({ event, resolve }) => {
	const route = event.route.id;
	if (route === null || openRoutes.has(route)) return resolve(event);
	const { locals } = event;
	const access = await gate(locals.house, locals.runner, locals.now);
	return access.allowed ? resolve(event) : sendAway(event);
};

/** A page leads to the result, which says why; anything else is refused without a word more. */
function sendAway({ request }: RequestEvent): never {
	if (request.method === 'GET' || request.method === 'HEAD') redirect(303, '/screening/result');
	error(403, { code: 'closed', message: faultText('closed') });
}
