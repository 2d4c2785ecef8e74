import { isHttpError, isRedirect, type RequestEvent } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import * as effortBands from '$lib/server/effort-bands.ts';
import type { House } from '$lib/server/open-house.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as profiles from '$lib/server/profiles.ts';
import { isDesk, openRoutes } from '../../src/perimeter/open-routes.ts';
import { inHouse, NOW } from './in-house.ts';
import { unevenRuns } from './sample-outing.ts';
import { screened } from './sample.ts';

/*
 * Where personal numbers are read the gate is asked again: the pages are called here as if the door
 * of the app had been left open.
 */

type Handler = (event: RequestEvent) => unknown;
interface PageModule {
	readonly load?: Handler;
	readonly actions?: Readonly<Record<string, Handler>>;
}

const pages = import.meta.glob<PageModule>('../../src/routes/**/+page.server.ts');
const routeOf = (file: string) => file.slice('../../src/routes'.length, -'/+page.server.ts'.length);
const gated = Object.entries(pages).filter(([file]) => {
	const route = routeOf(file);
	return route !== '' && !openRoutes.has(route) && !isDesk(route);
});

describe('behind a door that was left open', () => {
	const here = inHouse('sqlite');

	const asked = (runnerId: string | null, params: Record<string, string> = {}) => {
		const fields = { beats: '61', seconds: '60', on: '2026-11-25', name: 'Ines' };
		return {
			url: new URL('http://localhost/'),
			request: new Request('http://localhost/', {
				method: 'POST',
				body: new URLSearchParams(fields)
			}),
			params,
			cookies: { get: () => undefined, set: () => undefined, delete: () => undefined },
			depends: () => undefined,
			setHeaders: () => undefined,
			locals: {
				house: { database: here.database, vault: here.vault } as House,
				now: NOW,
				runner: runnerId === null ? null : { runnerId, sessionId: 'a session' },
				coach: null
			}
		} as unknown as RequestEvent;
	};

	async function answerOf(
		handler: Handler,
		runnerId: string | null,
		params?: Record<string, string>
	) {
		try {
			return await handler(asked(runnerId, params));
		} catch (thrown) {
			if (isRedirect(thrown)) return `${thrown.status} ${thrown.location}`;
			if (isHttpError(thrown)) return String(thrown.status);
			throw thrown;
		}
	}

	it('finds the pages that show numbers', () => {
		expect(gated.map(([file]) => routeOf(file))).toEqual(
			expect.arrayContaining(['/bands', '/bands/about-you', '/bands/resting-pulse'])
		);
	});

	it.each(gated)('%s leads nobody, and no runner who asks first, to a number', async (_, open) => {
		const { load, actions = {} } = await open();
		const askFirst = await here.runner();
		await screened(here, askFirst, { 'signs.other': ['ankles'] });
		const without = await here.runner();
		for (const runner of [null, without, askFirst]) {
			for (const handler of [load, ...Object.values(actions)]) {
				if (handler) expect(await answerOf(handler, runner)).toBe('303 /screening/result');
			}
			if (runner) {
				const kept = await profiles.load(here.database, here.vault, runner);
				expect(kept).toEqual(profiles.EMPTY);
			}
		}
		const open34 = await here.runner();
		await screened(here, open34);
		// Something of their own, for the pages that show one.
		const plan = await outingPlans.create(here.database, { runnerId: open34 }, unevenRuns, NOW);
		if (plan.kind !== 'created') throw new Error('not created');
		if (load) expect(await answerOf(load, open34, { outing: plan.id })).toBeTypeOf('object');
	});

	it('works out no band for somebody who asks first, although a pulse is kept', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const profile = {
			...profiles.EMPTY,
			mornings: [{ bpm: 61, on: '2026-11-24', method: 60 as const }]
		};
		await profiles.save(here.database, here.vault, runner, profile, NOW);
		const { house, runner: signed } = asked(runner).locals;
		const open = await effortBands.of(house, signed, NOW, '2026-11-25');
		expect(JSON.stringify(open.guidance)).toMatch(/"bpm":1\d\d/);
		await screened(here, runner, { 'signs.other': ['ankles'] }, NOW + 1);
		const shut = await effortBands.of(house, signed, NOW + 1, '2026-11-25');
		expect(shut.guidance).toEqual({ open: false, code: 'SEEK_ADVICE' });
	});
});
