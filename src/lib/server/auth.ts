import * as audit from './audit.ts';
import { changePassword, requestReset, resetPassword } from './coach-passwords.ts';
import { signInCoach, type CoachDoor, type Credentials, type From } from './coach-sign-in.ts';
import { signUpCoach, type SignUpAnswer, type SignUpWords } from './coach-sign-up.ts';
import { demoUsers } from './demo/demo.ts';
import { isDemoPerson } from './demo/people.ts';
import * as deviceCodes from './device-codes.ts';
import * as drafts from './drafts.ts';
import type { Letter, Mail } from './mail.ts';
import { oneSession } from './one-session.ts';
import { signInEndpoints } from './sign-in-endpoints.ts';
import { addressOf, signInLibrary, type SignInOptions } from './sign-in.ts';
import * as tabletReturns from './tablet-returns.ts';

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
	/** Makes a coach; the first one of the house is its host, and signed in at once. */
	signUpCoach(words: SignUpWords, invitation: string | null, from: From): Promise<SignUpAnswer>;
	/** Opens a coach's session. One that this browser had before ends. */
	signInCoach(typed: Credentials, from: From): Promise<SignedCoach | 'wrong' | 'too-many'>;
	changePassword(
		coach: SignedCoach,
		current: string,
		password: string,
		now: number
	): ReturnType<typeof changePassword>;
	/** Mails a link for a new password, where the house has mail. */
	requestReset(
		email: string,
		write: (link: string) => Omit<Letter, 'to'>,
		from: From
	): ReturnType<typeof requestReset>;
	resetPassword(token: string, password: string, now: number): ReturnType<typeof resetPassword>;
	/** A code that signs another device in as this runner. */
	createDeviceCode(runnerId: string, now: number): Promise<deviceCodes.DeviceCode>;
	/** A new session for the runner of a code, or null, whatever is wrong with the code. */
	redeemDeviceCode(typed: string, headers: Headers, now: number): Promise<Signed | null>;
	/** A code with which a member of a group answers again on its tablet; null for who is in none. */
	createTabletReturn(runnerId: string, groupId: string, now: number): Promise<string | null>;
	/** A session for the runner of such a code that answers again, and does nothing else. */
	redeemTabletReturn(
		groupId: string,
		typed: string,
		headers: Headers,
		now: number
	): Promise<Signed | 'wrong' | 'too-many'>;
	/** Whether it is the code of this runner, in this group. Counted as every try is. */
	isTabletReturnOf(
		runnerId: string,
		groupId: string,
		typed: string,
		now: number
	): Promise<boolean | 'too-many'>;
	/**
	 * Lets this browser look as somebody of the made-up group; see demo/. False for everybody else,
	 * whatever is sent, and for a browser in which somebody real is signed in.
	 */
	lookAs(person: string, headers: Headers): Promise<boolean>;
}

export interface AuthOptions extends SignInOptions {
	/** Hashes the codes that people type. Derived from the key of the house. */
	readonly deviceCodeKey: Buffer;
	/** Hashes what is counted against guessing. Derived from the key of the house. */
	readonly attemptKey: Buffer;
	/** Null where the host named no mail server. */
	readonly mail: Mail | null;
}

const NOBODY: Asking = { runner: null, coach: null };

export function openAuth(options: AuthOptions): Auth {
	const library = signInLibrary(options);
	const keys = { code: options.deviceCodeKey, attempts: options.attemptKey };
	const { database, deviceCodeKey } = options;

	const door: CoachDoor = { database, library, attemptKey: options.attemptKey };

	const asking = async (headers: Headers): Promise<Asking> => {
		const found = await library.api.getSession({ headers });
		if (!found) return NOBODY;
		const { id, isAnonymous } = found.user;
		const sessionId = found.session.id;
		return isAnonymous === true
			? { runner: { runnerId: id, sessionId }, coach: null }
			: { runner: null, coach: { coachId: id, sessionId } };
	};
	const one = oneSession({ ...options, library, asking });

	const signIn = (typed: Credentials, from: From) =>
		one.instead(from.headers, typed.stay, (headers) =>
			signInCoach(door, typed, { ...from, headers })
		);

	return {
		asking,
		session: async (headers) => (await asking(headers)).runner,
		handle: signInEndpoints(library, one),
		async signInAnonymous(headers) {
			const { runner } = await asking(headers);
			if (runner) return runner;
			return one.instead(headers, true, async (bare) => {
				const { token, user } = await library.api.signInAnonymous({ headers: bare });
				const opened = await database
					.selectFrom('session')
					.select('id')
					.where('token', '=', token)
					.executeTakeFirstOrThrow();
				return { runnerId: user.id, sessionId: opened.id };
			});
		},
		async signOut(headers) {
			await library.api.signOut({ headers });
		},
		async signUpCoach(words, invitation, from) {
			const answer = await signUpCoach(door, words, invitation, from);
			if (answer === 'host') await signIn({ ...words, stay: false }, from);
			return answer;
		},
		signInCoach: signIn,
		changePassword: (...given) => changePassword(door, ...given),
		requestReset: (email, write, from) =>
			requestReset(door, options.mail, email, (path) => write(addressOf(options) + path), from),
		resetPassword: (...given) => resetPassword(door, ...given),
		createDeviceCode: (runnerId, now) => deviceCodes.create(database, deviceCodeKey, runnerId, now),
		async redeemDeviceCode(typed, headers, now) {
			const runnerId = await deviceCodes.redeem(database, deviceCodeKey, typed, now);
			if (runnerId === null) return null;
			const signed = await one.instead(headers, true, (bare) =>
				library.api.openRunnerSession({ body: { runnerId }, headers: bare })
			);
			await audit.record(database, runnerId, now, 'device.linked', { sessionId: signed.sessionId });
			return signed;
		},
		createTabletReturn: (runnerId, groupId, now) =>
			tabletReturns.create(database, deviceCodeKey, { runnerId, groupId }, now),
		async redeemTabletReturn(groupId, typed, headers, now) {
			const found = await tabletReturns.redeem(database, keys, groupId, typed, now);
			if (typeof found === 'string') return found;
			const { runnerId } = found;
			const signed = await one.instead(headers, true, (bare) =>
				library.api.openRunnerSession({
					body: { runnerId, tablet: { groupId, now } },
					headers: bare
				})
			);
			// What was half answered earlier is nobody's to go on with here.
			await drafts.discard(database, runnerId);
			await audit.record(database, runnerId, now, 'tablet.returned', { groupId });
			return signed;
		},
		async isTabletReturnOf(runnerId, groupId, typed, now) {
			const found = await tabletReturns.redeem(database, keys, groupId, typed, now);
			return typeof found === 'string'
				? found === 'too-many' && found
				: found.runnerId === runnerId;
		},
		async lookAs(person, headers) {
			const madeUp = await demoUsers(database);
			const userId = isDemoPerson(person) ? madeUp.get(person) : undefined;
			const { runner, coach } = await asking(headers);
			const here = runner?.runnerId ?? coach?.coachId;
			const isRealHere = here !== undefined && ![...madeUp.values()].includes(here);
			if (userId === undefined || isRealHere) return false;
			await one.instead(headers, true, (bare) =>
				library.api.openRunnerSession({ body: { runnerId: userId }, headers: bare })
			);
			return true;
		}
	};
}
