import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { tabletStrip } from '$words/head.ts';
import type { LayoutServerLoad } from './$types';
import { lineOf } from './demo/line.ts';

export const load: LayoutServerLoad = async ({ locals, cookies, route }) => ({
	signedIn: locals.runner !== null && locals.tabletReturn === null,
	coachName: locals.coach?.name ?? null,
	demo: locals.demo && lineOf(locals.demo.as, cookies, route.id),
	tablet: locals.coach
		? null
		: stripOf(
				await sharedTablet.of(locals.house, cookies, locals.now),
				locals.tabletReturn !== null
			)
});

/** Its texts come with the page, for they stand on few. */
function stripOf(tablet: Awaited<ReturnType<typeof sharedTablet.of>>, isBack: boolean) {
	if (!tablet) return null;
	const { title, text, clear } = tabletStrip;
	const leave = isBack ? tabletStrip.leave : null;
	return { groupId: tablet.groupId, title, text: text(tablet.groupName), clear, leave };
}
