import { error, redirect, type Handle } from '@sveltejs/kit';
import { faultText } from '$words/faults.ts';

/**
 * What whoever is nobody may still open beside the made-up group: pages to read, the signs that need
 * help now, which are never taken away, and the demo itself. A route of tomorrow is not among them.
 */
const stillOpen: ReadonlySet<string> = new Set([
	'/',
	'/account/gone',
	'/api/auth/[...all]',
	'/coach/gone',
	'/demo',
	'/emergency-number',
	'/help',
	'/learn',
	'/learn/one-breath',
	'/learn/scale',
	'/learn/talk',
	'/learn/teach',
	'/manifest.webmanifest',
	'/methods',
	'/methods/by-hand',
	'/methods/checks',
	'/methods/formulas',
	'/offline',
	'/privacy',
	'/prompter',
	'/safety',
	'/safety/health',
	'/safety/outing',
	'/safety/weather',
	'/screening',
	'/screening/emergency',
	'/tablet/[group]',
	'/tablet/[group]/done'
]);

/** Where somebody real would get an account, also from a browser that looks as one of the made-up. */
const makesAccounts: ReadonlySet<string> = new Set(['/coach/invited/[token]', '/coach/sign-up']);

/**
 * While the made-up group is in the house nobody real begins here: no questions, no joining, no
 * sign-up, so that what is made up and what is real never stand side by side. The sign-in refuses
 * new accounts as well; this leads to the page that says so.
 */
export const onlyMadeUp: Handle = ({ event, resolve }) => {
	const { demo, coach } = event.locals;
	const route = event.route.id;
	if (!demo || route === null) return resolve(event);
	const isShut =
		demo.as === null
			? !stillOpen.has(route)
			: makesAccounts.has(route) || (coach !== null && route === '/screening/consent');
	if (!isShut) return resolve(event);
	if (event.request.method === 'GET' || event.request.method === 'HEAD')
		redirect(303, '/demo?only');
	error(403, { code: 'made-up', message: faultText('made-up') });
};
