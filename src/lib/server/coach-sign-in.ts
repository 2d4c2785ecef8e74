import { isAPIError } from 'better-auth/api';
import type { Kysely } from 'kysely';
import { allow, forget } from './attempts.ts';
import type { SignedCoach } from './auth.ts';
import type { Database } from './database/tables.ts';
import type { SignInLibrary } from './sign-in.ts';

const MINUTE_MS = 60_000;

/**
 * A coach who forgot tries a few; a whole group shares the address of its hall; and somebody who
 * guesses from many addresses meets the count of the e-mail. Our own numbers, no source.
 */
const FROM_HERE = { most: 10, withinMs: 15 * MINUTE_MS };
const OF_ADDRESS = { most: 60, withinMs: 15 * MINUTE_MS };
const OF_EMAIL = { most: 50, withinMs: 60 * MINUTE_MS };

/** What the coaches' part of the sign-in works with. */
export interface CoachDoor {
	readonly database: Kysely<Database>;
	readonly library: SignInLibrary;
	/** Hashes what is counted against guessing. Derived from the key of the house. */
	readonly attemptKey: Buffer;
}

/** Where a request comes from. */
export interface From {
	readonly headers: Headers;
	/** The address of the network, used to slow guessing down and never kept. */
	readonly address: string;
	readonly now: number;
}

export interface Credentials {
	/** Trimmed and in small letters, as the form leaves it. */
	readonly email: string;
	readonly password: string;
	/** Whether to stay signed in when the browser is closed. */
	readonly stay: boolean;
}

/**
 * Opens a session. Whether it is the e-mail or the password that is wrong is neither said nor to be
 * seen from the time it takes: the library hashes a password for nobody, too.
 */
export async function signInCoach(
	{ database, library, attemptKey }: CoachDoor,
	{ email, password, stay }: Credentials,
	{ headers, address, now }: From
): Promise<SignedCoach | 'wrong' | 'too-many'> {
	const here = `sign-in ${email} ${address}`;
	const mayTry =
		(await allow(database, attemptKey, here, FROM_HERE, now)) &&
		(await allow(database, attemptKey, `sign-in from ${address}`, OF_ADDRESS, now)) &&
		(await allow(database, attemptKey, `sign-in as ${email}`, OF_EMAIL, now));
	if (!mayTry) return 'too-many';
	try {
		const body = { email, password, rememberMe: stay };
		const { token, user } = await library.api.signInEmail({ body, headers });
		await forget(database, attemptKey, here);
		const { id } = await database
			.selectFrom('session')
			.select('id')
			.where('token', '=', token)
			.executeTakeFirstOrThrow();
		return { coachId: user.id, sessionId: id };
	} catch (error) {
		if (isAPIError(error) && error.statusCode < 500) return 'wrong';
		throw error;
	}
}
