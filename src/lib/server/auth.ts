import * as audit from './audit.ts';
import * as deviceCodes from './device-codes.ts';
import { ADDRESS_HEADER, SIGN_IN_PATH, signInLibrary, type SignInOptions } from './sign-in.ts';

/** Which runner asks, and from which session. */
export interface Signed {
	readonly runnerId: string;
	readonly sessionId: string;
}

/** Which coach asks, and from which session. */
export interface SignedCoach {
	readonly coachId: string;
	readonly sessionId: string;
}

/** Who asks: a runner, a coach, or nobody. A browser has one session, so never both. */
export interface Asking {
	readonly runner: Signed | null;
	readonly coach: SignedCoach | null;
}

export interface Auth {
	/** Answers a request to the sign-in endpoints; anything the app does not use is a 404. */
	handle(request: Request, address: string): Promise<Response>;
	/** Whose request this is. Slides the session along: the cookie goes with the answer. */
	asking(headers: Headers): Promise<Asking>;
	/** The runner whose request this is. A coach is none. */
	session(headers: Headers): Promise<Signed | null>;
	/**
	 * The runner of this request, made when there is none. The cookie goes with the answer. A coach
	 * who was signed in here is signed out: what a runner tells stays out of a coach's reach.
	 */
	signInAnonymous(headers: Headers): Promise<Signed>;
	signOut(headers: Headers): Promise<void>;
	/** A code that signs another device in as this runner. */
	createDeviceCode(runnerId: string, now: number): Promise<deviceCodes.DeviceCode>;
	/** A new session for the runner of a code, or null, whatever is wrong with the code. */
	redeemDeviceCode(typed: string, headers: Headers, now: number): Promise<Signed | null>;
}

export interface AuthOptions extends SignInOptions {
	/** Hashes device codes. Derived from the key of the house. */
	readonly deviceCodeKey: Buffer;
}

const OPEN_ENDPOINTS: ReadonlySet<string> = new Set([
	'GET /get-session',
	'POST /sign-in/anonymous',
	'POST /sign-out',
	'GET /passkey/generate-register-options',
	'POST /passkey/verify-registration',
	'GET /passkey/generate-authenticate-options',
	'POST /passkey/verify-authentication',
	'GET /passkey/list-user-passkeys',
	'POST /passkey/delete-passkey'
]);

const NOBODY: Asking = { runner: null, coach: null };

export function openAuth(options: AuthOptions): Auth {
	const library = signInLibrary(options);
	const { database, deviceCodeKey } = options;

	const asking = async (headers: Headers): Promise<Asking> => {
		const found = await library.api.getSession({ headers });
		if (!found) return NOBODY;
		const { id, isAnonymous } = found.user;
		const sessionId = found.session.id;
		return isAnonymous === true
			? { runner: { runnerId: id, sessionId }, coach: null }
			: { runner: null, coach: { coachId: id, sessionId } };
	};

	const endSession = (sessionId: string) =>
		database.deleteFrom('session').where('id', '=', sessionId).execute();

	return {
		asking,
		session: async (headers) => (await asking(headers)).runner,
		async handle(request, address) {
			const { pathname } = new URL(request.url);
			const endpoint = pathname.startsWith(`${SIGN_IN_PATH}/`)
				? pathname.slice(SIGN_IN_PATH.length)
				: '';
			if (!OPEN_ENDPOINTS.has(`${request.method} ${endpoint}`)) {
				return new Response(null, { status: 404 });
			}
			const headers = new Headers(request.headers);
			headers.set(ADDRESS_HEADER, address);
			return library.handler(new Request(request, { headers }));
		},
		async signInAnonymous(headers) {
			const present = await asking(headers);
			if (present.runner) return present.runner;
			if (present.coach) await endSession(present.coach.sessionId);
			const { token, user } = await library.api.signInAnonymous({ headers });
			const opened = await database
				.selectFrom('session')
				.select('id')
				.where('token', '=', token)
				.executeTakeFirstOrThrow();
			return { runnerId: user.id, sessionId: opened.id };
		},
		async signOut(headers) {
			await library.api.signOut({ headers });
		},
		createDeviceCode: (runnerId, now) => deviceCodes.create(database, deviceCodeKey, runnerId, now),
		async redeemDeviceCode(typed, headers, now) {
			const runnerId = await deviceCodes.redeem(database, deviceCodeKey, typed, now);
			if (runnerId === null) return null;
			const signed = await library.api.openRunnerSession({ body: { runnerId }, headers });
			await audit.record(database, runnerId, now, 'device.linked', { sessionId: signed.sessionId });
			return signed;
		}
	};
}
