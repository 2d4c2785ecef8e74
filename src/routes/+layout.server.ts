import * as sharedTablet from '$lib/server/shared-tablet.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, cookies }) => ({
	signedIn: Boolean(locals.runner),
	coachName: locals.coach?.name ?? null,
	demo: locals.demo,
	tablet: locals.coach ? null : await sharedTablet.of(locals.house, cookies, locals.now)
});
