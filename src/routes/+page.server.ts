import * as drafts from '$lib/server/drafts.ts';
import { gate } from '$lib/server/gate.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { house, runner, coach, now } }) => {
	if (coach) return { state: 'coach' as const };
	if (runner === null || house.vault.state !== 'right') return { state: 'new' as const };
	const access = await gate(house, runner, now);
	if (access.allowed) return { state: 'open' as const };
	const draft = await drafts.load(house.database, house.vault, runner.runnerId, now);
	if (draft !== null) return { state: 'draft' as const };
	return { state: access.code === 'NO_RESULT' ? ('new' as const) : ('closed' as const) };
};
