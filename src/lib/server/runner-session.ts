import { APIError, createAuthEndpoint, getSessionFromCtx } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import type { BetterAuthPlugin } from 'better-auth';
import { z } from 'zod';

/**
 * Opens a new session for a runner who proved who they are by a device code, or for somebody of the
 * made-up group. It has no address of its own: only our server can call it. A session that this
 * browser had before ends.
 */
export function runnerSession() {
	return {
		id: 'runner-session',
		endpoints: {
			openRunnerSession: createAuthEndpoint.serverOnly(
				{ method: 'POST', body: z.object({ runnerId: z.string() }), requireHeaders: true },
				async (context) => {
					const { internalAdapter } = context.context;
					const user = await internalAdapter.findUserById(context.body.runnerId);
					if (!user) throw new APIError('NOT_FOUND');
					const before = await getSessionFromCtx(context, { disableRefresh: true });
					if (before) await internalAdapter.deleteSession(before.session.token);
					const session = await internalAdapter.createSession(user.id);
					await setSessionCookie(context, { session, user });
					return { runnerId: user.id, sessionId: session.id };
				}
			)
		}
	} satisfies BetterAuthPlugin;
}
