import { APIError, createAuthEndpoint, getSessionFromCtx } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import type { BetterAuthPlugin } from 'better-auth';
import type { Kysely } from 'kysely';
import { z } from 'zod';
import type { Database } from './database/tables.ts';
import * as tabletReturns from './tablet-returns.ts';

const opening = z.object({
	runnerId: z.string(),
	/** Where somebody answers again on a shared tablet, and does nothing else. */
	tablet: z.object({ groupId: z.string(), now: z.number() }).optional()
});

/**
 * Opens a new session for a runner who proved who they are by a code, or for somebody of the made-up
 * group. It has no address of its own: only our server can call it. A session that this browser had
 * before ends.
 */
export function runnerSession(database: Kysely<Database>) {
	return {
		id: 'runner-session',
		endpoints: {
			openRunnerSession: createAuthEndpoint.serverOnly(
				{ method: 'POST', body: opening, requireHeaders: true },
				async (context) => {
					const { internalAdapter } = context.context;
					const { runnerId, tablet } = context.body;
					const user = await internalAdapter.findUserById(runnerId);
					if (!user) throw new APIError('NOT_FOUND');
					const before = await getSessionFromCtx(context, { disableRefresh: true });
					if (before) await internalAdapter.deleteSession(before.session.token);
					const session = await internalAdapter.createSession(user.id);
					if (tablet) await tabletReturns.mark(database, session.id, tablet.groupId, tablet.now);
					await setSessionCookie(context, { session, user });
					return { runnerId: user.id, sessionId: session.id };
				}
			)
		}
	} satisfies BetterAuthPlugin;
}
