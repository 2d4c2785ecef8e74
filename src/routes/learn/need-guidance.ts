import { redirect } from '@sveltejs/kit';
import * as effortBands from '$lib/server/effort-bands.ts';
import { needOpen } from '../standing-of.ts';

/** For lessons that ask for effort: the open gate and what may be shown, or away to the result. */
export async function needGuidance(event: Parameters<typeof needOpen>[0]) {
	const asked = await needOpen(event);
	const { guidance } = await effortBands.of(asked.house, asked.runner, asked.now, asked.today);
	if (!guidance.open) redirect(303, '/screening/result');
	return { ...asked, guidance };
}
