import type { RequestEvent } from '@sveltejs/kit';
import type { AdviceRole } from '$lib/screening/types.ts';
import * as memberships from '$lib/server/memberships.ts';

/**
 * The runner's coaches and their qualifications, where one of these reasons may be talked over with
 * an exercise professional, as age may; else nobody.
 */
export async function ownCoaches(
	{ locals: { house, runner } }: Pick<RequestEvent, 'locals'>,
	reasons: readonly { readonly roles: readonly AdviceRole[] }[]
): Promise<{ readonly name: string; readonly qualification: string | null }[]> {
	const isAsked = reasons.some(({ roles }) => roles.includes('exercise-professional'));
	if (!isAsked || runner === null) return [];
	const coaches = await memberships.coachesOf(house.database, runner.runnerId);
	return coaches.map(({ name, qualification }) => ({ name, qualification }));
}
