import type { oneSession } from './one-session.ts';
import { ADDRESS_HEADER, SIGN_IN_PATH, type SignInLibrary } from './sign-in.ts';

/** What a script of ours asks: passkeys alone. Everything else is done by forms. */
const OPEN_ENDPOINTS: ReadonlySet<string> = new Set([
	'GET /passkey/generate-register-options',
	'POST /passkey/verify-registration',
	'GET /passkey/generate-authenticate-options',
	'POST /passkey/verify-authentication'
]);

/** The one that opens a session. */
const SIGNING_IN = '/passkey/verify-authentication';

/** Answers a request to the sign-in endpoints; anything the app does not use is a 404. */
export const signInEndpoints =
	(library: SignInLibrary, one: ReturnType<typeof oneSession>) =>
	async (request: Request, address: string): Promise<Response> => {
		const { pathname } = new URL(request.url);
		const endpoint = pathname.startsWith(`${SIGN_IN_PATH}/`)
			? pathname.slice(SIGN_IN_PATH.length)
			: '';
		if (!OPEN_ENDPOINTS.has(`${request.method} ${endpoint}`)) {
			return new Response(null, { status: 404 });
		}
		const headers = new Headers(request.headers);
		headers.set(ADDRESS_HEADER, address);
		const asked = new Request(request, { headers });
		return endpoint === SIGNING_IN
			? one.insteadThroughEndpoint(asked, library.handler)
			: library.handler(asked);
	};
