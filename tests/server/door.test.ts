import { isHttpError, isRedirect, type RequestEvent } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import { gate } from '$lib/server/gate.ts';
import type { House } from '$lib/server/open-house.ts';
import * as results from '$lib/server/results.ts';
import type { ScreeningResult } from '$lib/screening/types.ts';
import { openOrShut } from '../../src/perimeter/open-or-shut.ts';
import { openRoutes } from '../../src/perimeter/open-routes.ts';
import { DATABASES, inHouse, NOW, type InHouse } from './in-house.ts';
import { screened } from './sample.ts';

/*
 * The door of the app with stored results that no page can make: of an older rule set, or of none
 * that was ever published. And with a route that nobody wrote yet.
 */

const inside = (here: InHouse) => ({ database: here.database, vault: here.vault }) as House;

/** What the door says to somebody: 'open', or where it leads, or the refusal. */
async function knock(here: InHouse, runnerId: string | null, route: string, method = 'GET') {
	const event = {
		route: { id: route },
		request: new Request(`http://localhost${route}`, { method }),
		locals: {
			house: inside(here),
			now: NOW,
			runner: runnerId === null ? null : { runnerId, sessionId: 'a session' }
		}
	} as unknown as RequestEvent;
	try {
		const answer = await openOrShut({ event, resolve: () => new Response('numbers') });
		return await answer.text();
	} catch (thrown) {
		if (isRedirect(thrown)) return `${thrown.status} ${thrown.location}`;
		if (isHttpError(thrown)) return String(thrown.status);
		throw thrown;
	}
}

describe.each(DATABASES)('the door on %s', (type) => {
	const here = inHouse(type);
	const tomorrow = '/a-route/that-nobody/listed/[id]';

	it('is shut for a route that is on no list, and open once the gate is', async () => {
		expect(openRoutes.has(tomorrow)).toBe(false);
		const runner = await here.runner();
		for (const somebody of [null, runner]) {
			expect(await knock(here, somebody, tomorrow)).toBe('303 /screening/result');
			for (const method of ['POST', 'PUT', 'PATCH', 'DELETE']) {
				expect(await knock(here, somebody, tomorrow, method)).toBe('403');
			}
		}
		await screened(here, runner);
		expect(await knock(here, runner, tomorrow)).toBe('numbers');
		expect(await knock(here, null, tomorrow)).toBe('303 /screening/result');
	});

	it('lets anybody through to the urgent signs', async () => {
		expect(await knock(here, null, '/screening')).toBe('numbers');
	});

	const changes: readonly (readonly [string, Partial<ScreeningResult>])[] = [
		['an older major version of the rule set', { rulesetVersion: '0.9.0' }],
		['a newer major version than this server knows', { rulesetVersion: '2.0.0' }],
		['a rule set that was never published', { rulesetId: '2020-01' }],
		['a version that is none', { rulesetVersion: 'latest' }],
		['reasons that the status does not follow from', { reasons: ['R-SIGN-ANKLES'] }],
		['a reason that no rule set has', { reasons: ['R-NOBODY'] }]
	];

	it.each(changes)('is shut for a stored result with %s: answer again', async (_, change) => {
		const runner = await here.runner();
		const result = await screened(here, runner);
		const older = { ...result, ...change, id: `${runner}-older`, completedAt: NOW };
		await here.database.deleteFrom('screening_result').where('runner_id', '=', runner).execute();
		await results.store(here.database, here.vault, runner, older);
		const asks = { runnerId: runner, sessionId: 'a session' };
		expect(await gate(inside(here), asks, NOW)).toMatchObject({ allowed: false, code: 'RESCREEN' });
		expect(await knock(here, runner, '/bands')).toBe('303 /screening/result');
		expect(await knock(here, runner, '/bands/about-you', 'POST')).toBe('403');
	});
});
