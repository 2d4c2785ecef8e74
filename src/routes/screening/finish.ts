import { redirect, type RequestEvent } from '@sveltejs/kit';
import type { Signed } from '$lib/server/auth.ts';
import { decide } from '$lib/server/decide.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';

/** Turns the open form into a result and leads to it. Pressed twice, it leads to the same one. */
export async function finish(event: RequestEvent, runner: Signed): Promise<never> {
	const { house, now } = event.locals;
	const { timeZone } = await visitor(house, runner, event.cookies);
	const { database, vault } = house;
	const done = await screenings.complete(
		database,
		vault,
		runner.runnerId,
		{ decide, timeZone },
		now
	);
	if (done.kind === 'incomplete') redirect(303, '/screening/check');
	redirect(303, '/screening/result');
}
