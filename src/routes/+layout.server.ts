import * as sharedTablet from '$lib/server/shared-tablet.ts';
import type { LayoutServerLoad } from './$types';
import { lineOf } from './demo/line.ts';

export const load: LayoutServerLoad = async ({ locals, cookies, route }) => ({
	signedIn: Boolean(locals.runner),
	coachName: locals.coach?.name ?? null,
	demo: locals.demo && lineOf(locals.demo.as, cookies, route.id),
	tablet: locals.coach ? null : await sharedTablet.of(locals.house, cookies, locals.now)
});
