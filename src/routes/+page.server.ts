import type { RequestEvent } from '@sveltejs/kit';
import { mayLoad } from '$lib/server/demo/may-change.ts';
import * as drafts from '$lib/server/drafts.ts';
import { gate } from '$lib/server/gate.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => ({
	...(await stateOf(event.locals)),
	demo: await demoDoor(event)
});

/** In an empty house the made-up group is offered; where it is, nobody else can begin. */
async function demoDoor(event: RequestEvent) {
	const { house, demo, runner, coach } = event.locals;
	if (demo) return demo.as === null ? ('go' as const) : null;
	return !runner && !coach && (await mayLoad(house, event)) ? ('load' as const) : null;
}

async function stateOf({ house, runner, coach, now }: App.Locals) {
	if (coach) return { state: 'coach' as const };
	if (runner === null || house.vault.state !== 'right') return { state: 'new' as const };
	const access = await gate(house, runner, now);
	if (access.allowed) return { state: 'open' as const };
	const draft = await drafts.load(house.database, house.vault, runner.runnerId, now);
	if (draft !== null) return { state: 'draft' as const };
	return { state: access.code === 'NO_RESULT' ? ('new' as const) : ('closed' as const) };
}
