import type { Kysely } from 'kysely';
import type { Asking } from './auth.ts';
import type { Database } from './database/tables.ts';
import type { RequestEvent, SignInLibrary } from './sign-in.ts';

interface Browsers {
	readonly database: Kysely<Database>;
	readonly library: SignInLibrary;
	readonly requestEvent: RequestEvent;
	asking(headers: Headers): Promise<Asking>;
}

/**
 * A browser has one session: a new one takes the place of whatever was there.
 *
 * A session that is to last until the browser is closed leaves a cookie that tells the library the
 * same for every later one. A runner who came after a coach would lose their account with the
 * window. So the library does not see that cookie where a session begins, and it goes.
 */
export function oneSession({ database, library, requestEvent, asking }: Browsers) {
	const cookie = async () => (await library.$context).authCookies.dontRememberToken;

	const end = async ({ runner, coach }: Asking) => {
		const ended = (runner ?? coach)?.sessionId;
		if (ended) await database.deleteFrom('session').where('id', '=', ended).execute();
	};

	return {
		/**
		 * For a form. Ends the session that this browser had, if the new one opens.
		 * @param stays whether the new one outlives the browser's window
		 * @param open answers with a text when it opens none
		 */
		async instead<Opened extends object | string>(
			headers: Headers,
			stays: boolean,
			open: (bare: Headers) => Promise<Opened>
		): Promise<Opened> {
			const before = await asking(headers);
			const bare = new Headers(headers);
			bare.delete('cookie');
			const opened = await open(bare);
			if (typeof opened === 'string') return opened;
			await end(before);
			const { name } = await cookie();
			if (stays && headers.get('cookie')?.includes(`${name}=`)) {
				requestEvent()?.cookies.set(name, '', { path: '/', maxAge: 0 });
			}
			return opened;
		},

		/** The same for a script that asks an endpoint. */
		async insteadThroughEndpoint(
			request: Request,
			open: (request: Request) => Promise<Response>
		): Promise<Response> {
			const before = await asking(request.headers);
			const { name } = await cookie();
			const sent = (request.headers.get('cookie') ?? '').split('; ');
			const kept = sent.filter((one) => !one.startsWith(`${name}=`));
			const headers = new Headers(request.headers);
			headers.set('cookie', kept.join('; '));
			const response = await open(new Request(request, { headers }));
			if (!response.ok) return response;
			await end(before);
			if (kept.length < sent.length) {
				response.headers.append('set-cookie', `${name}=; Max-Age=0; Path=/`);
			}
			return response;
		}
	};
}
