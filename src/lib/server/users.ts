import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';

/** Somebody with an account, as the sign-in library would write the row. */
export interface NewUser {
	readonly email: string;
	/** What the library calls them: the names that people read stand elsewhere. */
	readonly name: 'Coach' | 'Runner';
	/** True for runners. */
	readonly isAnonymous: boolean;
}

/** Answers the id, or null when the e-mail has an account. */
export async function insert(
	step: Kysely<Database>,
	{ email, name, isAnonymous }: NewUser,
	now: number
): Promise<string | null> {
	const id = randomUUID();
	const at = new Date(now);
	const { numInsertedOrUpdatedRows } = await step
		.insertInto('user')
		.values({ id, name, email, emailVerified: false, createdAt: at, updatedAt: at, isAnonymous })
		.onConflict((conflict) => conflict.column('email').doNothing())
		.executeTakeFirst();
	return numInsertedOrUpdatedRows ? id : null;
}
