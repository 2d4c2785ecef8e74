import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { passwordIssue, type PasswordIssue } from '../forms/password.ts';
import { allow } from './attempts.ts';
import type { CoachDoor, From } from './coach-sign-in.ts';
import type { Database } from './database/tables.ts';
import { isDemoHere } from './demo/demo.ts';
import * as hosting from './hosting.ts';
import * as houseSettings from './house-settings.ts';
import * as invited from './invited-coaches.ts';
import * as users from './users.ts';

const OF_ADDRESS = { most: 20, withinMs: 60 * 60_000 };

export interface SignUpWords {
	readonly name: string;
	readonly qualification: string | null;
	/** Trimmed and in small letters, as the form leaves it. */
	readonly email: string;
	readonly password: string;
}

/**
 * `made` also when the e-mail has an account already: a stranger does not learn from it who is a
 * coach here. `host` is the first one of the house, where no e-mail can be taken.
 */
export type SignUpAnswer =
	'made' | 'host' | 'no-invitation' | 'closed' | 'too-many' | { readonly issue: PasswordIssue };

/** Whatever was written is taken back. */
class Refused extends Error {
	readonly answer: SignUpAnswer;

	constructor(answer: SignUpAnswer) {
		super('the sign-up was refused');
		this.answer = answer;
	}
}

/**
 * Makes a coach, if the house is open to them: nobody is a coach here yet, or anybody may become
 * one, or they hold an invitation. Never beside the made-up group.
 */
export async function signUpCoach(
	{ database, library, attemptKey }: CoachDoor,
	words: SignUpWords,
	invitationToken: string | null,
	{ address, now }: From
): Promise<SignUpAnswer> {
	const issue = passwordIssue(words.password, words);
	if (issue) return { issue };
	if (!(await allow(database, attemptKey, `sign-up from ${address}`, OF_ADDRESS, now))) {
		return 'too-many';
	}
	const hash = await (await library.$context).password.hash(words.password);
	try {
		return await database.transaction().execute(async (step) => {
			if (await isDemoHere(step)) return 'closed';
			const invitation =
				invitationToken === null ? null : await invited.find(step, invitationToken, now);
			if (invitationToken !== null && !invitation) return 'no-invitation';
			const way = await houseSettings.signUp(step);
			if (way === 'invitation' && !invitation) return 'closed';
			const coach = await makeCoach(step, words, hash, now);
			if (coach === null) return 'made';
			const { coachId, isHost } = coach;
			// Somebody else became the first at the same moment.
			if (way === 'first' && !isHost && !invitation) throw new Refused('closed');
			if (invitation && !(await invited.use(step, invitation, coachId, now))) {
				throw new Refused('no-invitation');
			}
			return isHost ? 'host' : 'made';
		});
	} catch (error) {
		if (error instanceof Refused) return error.answer;
		throw error;
	}
}

/** Writes the account and the coach, the host where there is none yet. Null when the e-mail is taken. */
export async function makeCoach(
	step: Kysely<Database>,
	{ name, qualification, email }: Omit<SignUpWords, 'password'>,
	hash: string,
	now: number
): Promise<{ readonly coachId: string; readonly isHost: boolean } | null> {
	// The coach's own name stands in one place, the coach's row.
	const id = await users.insert(step, { email, name: 'Coach', isAnonymous: false }, now);
	if (id === null) return null;
	const at = new Date(now);
	const account = { providerId: 'credential', password: hash, createdAt: at, updatedAt: at };
	await step
		.insertInto('account')
		.values({ ...account, id: randomUUID(), userId: id, accountId: id })
		.execute();
	const isHost = await hosting.claim(step, id);
	await step
		.insertInto('coach')
		.values({ coach_id: id, name, qualification, is_host: Number(isHost), created_at: now })
		.execute();
	return { coachId: id, isHost };
}
