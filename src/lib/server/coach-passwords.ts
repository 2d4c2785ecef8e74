import type { Kysely } from 'kysely';
import { passwordIssue, type PasswordIssue } from '../forms/password.ts';
import { allow } from './attempts.ts';
import * as audit from './audit.ts';
import type { SignedCoach } from './auth.ts';
import type { CoachDoor, From } from './coach-sign-in.ts';
import type { Database } from './database/tables.ts';
import type { Letter, Mail } from './mail.ts';
import * as resets from './password-resets.ts';
import { resetPath } from './reset-path.ts';

const HOUR_MS = 60 * 60_000;
const CHANGES = { most: 10, withinMs: HOUR_MS / 4 };
const ASKED_FROM_ADDRESS = { most: 20, withinMs: HOUR_MS };
const ASKED_FOR_EMAIL = { most: 3, withinMs: HOUR_MS };

type NewPassword = 'changed' | 'too-many' | { readonly issue: PasswordIssue };

/** Sets another password. Every other session of the coach ends; this one stays. */
export async function changePassword(
	door: CoachDoor,
	{ coachId, sessionId }: SignedCoach,
	current: string,
	password: string,
	now: number
): Promise<NewPassword | 'wrong'> {
	const { database, library, attemptKey } = door;
	if (!(await allow(database, attemptKey, `password of ${coachId}`, CHANGES, now))) {
		return 'too-many';
	}
	const owner = await ownerOf(database, coachId);
	const context = await library.$context;
	const isRight = await context.password.verify({ hash: owner.hash, password: current });
	if (!isRight) return 'wrong';
	const issue = passwordIssue(password, owner);
	if (issue) return { issue };
	const hash = await context.password.hash(password);
	await database.transaction().execute(async (step) => {
		await store(step, coachId, hash, now);
		await step
			.deleteFrom('session')
			.where('userId', '=', coachId)
			.where('id', '!=', sessionId)
			.execute();
		await audit.record(step, coachId, now, 'password.changed');
	});
	return 'changed';
}

/**
 * Mails a link to the coach of an e-mail, if there is one. Everything that depends on whether there
 * is one happens after the answer.
 * @param write the letter around a link
 */
export async function requestReset(
	{ database, attemptKey }: CoachDoor,
	mail: Mail | null,
	email: string,
	write: (path: string) => Omit<Letter, 'to'>,
	{ address, now }: From
): Promise<'asked' | 'too-many' | 'no-mail'> {
	if (!mail) return 'no-mail';
	const mayAsk =
		(await allow(database, attemptKey, `reset from ${address}`, ASKED_FROM_ADDRESS, now)) &&
		(await allow(database, attemptKey, `reset of ${email}`, ASKED_FOR_EMAIL, now));
	if (!mayAsk) return 'too-many';
	mail.post(async () => {
		const coachId = await resets.coachOf(database, email);
		if (coachId === null) return null;
		const { token } = await resets.create(database, coachId, now);
		return { to: email, ...write(resetPath(token)) };
	});
	return 'asked';
}

/** Sets a new password by a link, once. Every session of the coach ends. */
export async function resetPassword(
	{ database, library }: CoachDoor,
	token: string,
	password: string,
	now: number
): Promise<NewPassword | 'no-link'> {
	const coachId = await resets.peek(database, token, now);
	if (coachId === null) return 'no-link';
	const issue = passwordIssue(password, await ownerOf(database, coachId));
	if (issue) return { issue };
	const hash = await (await library.$context).password.hash(password);
	return database.transaction().execute(async (step) => {
		if ((await resets.use(step, token, now)) === null) return 'no-link';
		await store(step, coachId, hash, now);
		await step.deleteFrom('session').where('userId', '=', coachId).execute();
		await audit.record(step, coachId, now, 'password.reset');
		return 'changed';
	});
}

async function store(step: Kysely<Database>, coachId: string, hash: string, now: number) {
	await step
		.updateTable('account')
		.set({ password: hash, updatedAt: new Date(now) })
		.where('userId', '=', coachId)
		.where('providerId', '=', 'credential')
		.execute();
	await resets.endAll(step, coachId);
}

async function ownerOf(database: Kysely<Database>, coachId: string) {
	const row = await database
		.selectFrom('coach')
		.innerJoin('user', 'user.id', 'coach.coach_id')
		.innerJoin('account', 'account.userId', 'coach.coach_id')
		.select(['coach.name', 'user.email', 'account.password'])
		.where('coach.coach_id', '=', coachId)
		.where('account.providerId', '=', 'credential')
		.executeTakeFirstOrThrow();
	return { name: row.name, email: row.email, hash: row.password ?? '' };
}
