import * as sharedTablet from '$lib/server/shared-tablet.ts';
import type { PageServerLoad } from './$types';

/** Whoever has just joined reads the code, once. By then the tablet is cleared. */
export const load: PageServerLoad = ({ locals: { house, now }, params, url, cookies }) => ({
	groupId: params.group,
	hasLeft: url.searchParams.has('left'),
	code: sharedTablet.taken(house, cookies, params.group, now)
});
