import { error, redirect, type Handle } from '@sveltejs/kit';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import * as tabletReturns from '$lib/server/tablet-returns.ts';
import { faultText } from '$words/faults.ts';

/**
 * What somebody may open who answers again on a shared tablet: the questions, what came of them
 * today, and pages that say nothing of anybody. A route of tomorrow is not among them.
 */
const stillOpen: ReadonlySet<string> = new Set([
	'/help',
	'/learn',
	'/learn/one-breath',
	'/learn/scale',
	'/learn/talk',
	'/methods',
	'/methods/by-hand',
	'/methods/checks',
	'/methods/formulas',
	'/privacy',
	'/safety',
	'/safety/health',
	'/safety/outing',
	'/safety/weather',
	'/screening',
	'/screening/changed',
	'/screening/check',
	'/screening/consent',
	'/screening/emergency',
	'/screening/questions/[n]',
	'/screening/result',
	'/tablet/[group]',
	'/tablet/[group]/done'
]);

/**
 * Whoever came back by a code answers again, and sees nothing from before: whoever found or kept the
 * code, a coach among them, reads nothing of it. Away from the tablet of the group, or when its time
 * is over, it is nobody's session.
 */
export const answersAgainOnly: Handle = async ({ event, resolve }) => {
	const { locals, cookies, request, route } = event;
	const { house, runner, now } = locals;
	const found = runner && (await tabletReturns.ofSession(house.database, runner.sessionId));
	if (!found) return resolve(event);
	const shared = await sharedTablet.of(house, cookies, now);
	if (found.endsAt <= now || shared?.groupId !== found.groupId) {
		await house.auth.signOut(request.headers);
		locals.runner = null;
		return resolve(event);
	}
	locals.tabletReturn = found;
	if (route.id === null || stillOpen.has(route.id)) return resolve(event);
	if (request.method === 'GET' || request.method === 'HEAD')
		redirect(303, `/tablet/${found.groupId}`);
	error(403, { code: 'closed', message: faultText('closed') });
};
