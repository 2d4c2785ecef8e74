import { randomBytes } from 'node:crypto';
import { passkey } from '@better-auth/passkey';
import { betterAuth } from 'better-auth';
import { APIError } from 'better-auth/api';
import { sveltekitCookies } from 'better-auth/svelte-kit';
import { anonymous } from 'better-auth/plugins';
import type { Kysely } from 'kysely';
import { PASSWORD_LONGEST } from '../forms/password.ts';
import { databaseType } from './database/dialect.ts';
import type { Database } from './database/tables.ts';
import { isDemoHere } from './demo/demo.ts';
import { runnerSession } from './runner-session.ts';

/** Where the sign-in endpoints live. */
export const SIGN_IN_PATH = '/api/auth';

/** The request's own address, set by us alone and used only to slow guessing down. */
export const ADDRESS_HEADER = 'x-breathmark-address';

/** The longest that browsers keep a cookie. A runner who skips a month stays signed in. */
const SESSION_SECONDS = 400 * 24 * 60 * 60;
const DAY_SECONDS = 24 * 60 * 60;

/** The request that is being answered, as far as cookies go. Undefined outside a request. */
export type RequestEvent = Parameters<typeof sveltekitCookies>[0];

export interface SignInOptions {
	readonly database: Kysely<Database>;
	/** Signs cookies. Derived from the key of the house. */
	readonly secret: string;
	/** What people type, or null for this computer alone. */
	readonly origin: string | null;
	readonly port: number;
	readonly requestEvent: RequestEvent;
	/** Hears in one line what went wrong inside the library. */
	readonly report: (line: string) => void;
}

/** The address of the house, for links. Never the one that a request names: it could name any. */
export const addressOf = ({ origin, port }: Pick<SignInOptions, 'origin' | 'port'>) =>
	origin ?? `http://localhost:${port}`;

export type SignInLibrary = ReturnType<typeof signInLibrary>;

/**
 * The sign-in library, set up for runners without a name, an address or a password, and for coaches
 * with an e-mail and one. Passwords are kept as the library keeps them: scrypt with a salt each.
 */
export function signInLibrary(options: SignInOptions) {
	const { database, origin } = options;
	return betterAuth({
		appName: 'Breathmark',
		baseURL: addressOf(options),
		basePath: SIGN_IN_PATH,
		trustedOrigins: origin ? [origin] : ['http://localhost:*', 'http://127.0.0.1:*'],
		secret: options.secret,
		database: { db: database, type: databaseType(database) },
		telemetry: { enabled: false },
		logger: {
			log: (level, message, ...causes) => {
				if (level === 'error') options.report(line(message, causes));
			}
		},
		emailAndPassword: {
			enabled: true,
			// A coach comes with an invitation and a row of their own: see coach-sign-up.ts.
			disableSignUp: true,
			// In UTF-16 units, of which a character has one or two.
			maxPasswordLength: 2 * PASSWORD_LONGEST
		},
		session: {
			expiresIn: SESSION_SECONDS,
			updateAge: DAY_SECONDS,
			// There is no password to ask for again, so an old session may add a passkey.
			freshAge: 0
		},
		// A whole group shares the address of its hall.
		rateLimit: {
			enabled: true,
			storage: 'database',
			window: 60,
			max: 300,
			customRules: {
				'/passkey/verify-authentication': { window: 60, max: 60 }
			}
		},
		// The address slows guessing down; it is not kept with the session.
		databaseHooks: {
			user: { create: { before: () => refuseBesideDemo(database) } },
			session: { create: { before: async (row) => ({ data: { ...row, ipAddress: '' } }) } }
		},
		advanced: {
			cookiePrefix: 'breathmark',
			useSecureCookies: origin?.startsWith('https:') ?? false,
			ipAddress: { ipAddressHeaders: [ADDRESS_HEADER] },
			disableOriginCheck: false,
			disableCSRFCheck: false
		},
		plugins: [
			anonymous({
				// Reserved by RFC 2606: no mail can ever go there. A passkey shows it where no name is given.
				generateRandomEmail: () => `runner-${randomBytes(6).toString('hex')}@runner.invalid`,
				generateName: () => 'Runner',
				disableDeleteAnonymousUser: true
			}),
			passkey({
				rpName: 'Breathmark',
				origin,
				authenticatorSelection: { residentKey: 'required', userVerification: 'preferred' }
			}),
			runnerSession(database),
			sveltekitCookies(options.requestEvent)
		]
	});
}

/** Nobody real comes in while the made-up group is in the house. */
async function refuseBesideDemo(database: Kysely<Database>): Promise<void> {
	if (await isDemoHere(database)) throw new APIError('FORBIDDEN');
}

/** Name and code of what went wrong, and never its values: they may be a row or a cookie. */
function line(message: string, causes: readonly unknown[]): string {
	const names = causes.filter((cause) => cause instanceof Error).map(nameOf);
	return ['sign-in:', message.split('\n')[0], ...names].join(' ');
}

function nameOf(error: Error & { code?: unknown }): string {
	return typeof error.code === 'string' ? `${error.name} ${error.code}` : error.name;
}
