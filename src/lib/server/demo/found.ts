import { randomBytes } from 'node:crypto';
import { hashPassword } from 'better-auth/crypto';
import type { Kysely } from 'kysely';
import { makeCoach } from '../coach-sign-up.ts';
import type { Coach } from '../coaches.ts';
import type { Database } from '../database/tables.ts';
import { DEMO, isDemoHere, isEmptyHouse, type DemoState } from './demo.ts';
import { DEMO_COACH, type DemoPerson } from './people.ts';
import type { DemoWords } from './words.ts';

/** Whatever was written is taken back: somebody real was faster. */
class NotEmpty extends Error {}

/**
 * Puts the sign up that the made-up group is here, and its coach, who is the host, in one step. Of
 * two who come at once, or of this and a real first coach, one is refused.
 */
export async function found(
	database: Kysely<Database>,
	words: DemoWords['coach'],
	now: number
): Promise<Coach | 'already' | 'not-empty'> {
	// Nobody knows this password: the made-up coach is only looked at from the demo.
	const hash = await hashPassword(randomBytes(32).toString('base64url'));
	try {
		return await database.transaction().execute(async (step) => {
			if (await isDemoHere(step)) return 'already';
			if (!(await isEmptyHouse(step))) {
				// It may have come in between the two questions.
				return (await isDemoHere(step)) ? 'already' : 'not-empty';
			}
			const state: DemoState = 'loading';
			const { numInsertedOrUpdatedRows } = await step
				.insertInto('house_setting')
				.values({ name: DEMO, value: state })
				.onConflict((conflict) => conflict.column('name').doNothing())
				.executeTakeFirst();
			if (!numInsertedOrUpdatedRows) return 'already';
			const made = await makeCoach(step, { ...words, email: emailOf(DEMO_COACH) }, hash, now);
			if (!made?.isHost) throw new NotEmpty('there is a host already');
			await mark(step, made.coachId, DEMO_COACH);
			return { ...made, ...words };
		});
	} catch (error) {
		if (error instanceof NotEmpty) return 'not-empty';
		throw error;
	}
}

/** Reserved by RFC 2606: no mail can ever go there. */
export const emailOf = (person: DemoPerson) => `${person}@lantern-street.invalid`;

/** Writes down that an account is made up. Only what makes one calls this. */
export async function mark(
	step: Kysely<Database>,
	userId: string,
	person: DemoPerson
): Promise<void> {
	await step.insertInto('demo_person').values({ user_id: userId, person }).execute();
}
