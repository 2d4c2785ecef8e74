import type { RequestEvent } from '@sveltejs/kit';
import * as joining from '$lib/server/joining.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { invitedTo } from '$lib/server/visitor.ts';

/** A group that somebody was about to join before they answered the questions, and where to go on. */
export async function onTheWay(
	{ house, runner, now }: RequestEvent['locals'],
	cookies: RequestEvent['cookies']
): Promise<{ readonly group: string; readonly href: string } | null> {
	if (runner === null) return null;
	const shared = await sharedTablet.of(house, cookies, now);
	if (shared) return { group: shared.groupName, href: `/tablet/${shared.groupId}` };
	const token = invitedTo(cookies);
	if (token === null) return null;
	const seen = await joining.look(house.database, token, runner.runnerId, now);
	if (seen.state !== 'open' || seen.group.member !== null) return null;
	return { group: seen.group.name, href: `/join/${encodeURIComponent(token)}` };
}
