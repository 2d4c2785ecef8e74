import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';

/** Who may become a coach here: the first one, who becomes the host; anybody; the invited. */
export type SignUp = 'first' | 'open' | 'invitation';

/** The row that whoever becomes the first coach writes: only one can. */
export const HOST = 'host';
const SIGN_UP = 'coach-sign-up';

export async function signUp(database: Kysely<Database>): Promise<SignUp> {
	const rows = await database
		.selectFrom('house_setting')
		.select(['name', 'value'])
		.where('name', 'in', [HOST, SIGN_UP])
		.execute();
	const settings = new Map(rows.map(({ name, value }) => [name, value]));
	if (!settings.has(HOST)) return 'first';
	return settings.get(SIGN_UP) === 'open' ? 'open' : 'invitation';
}

/** @returns whether it was the host who asked */
export async function setSignUp(
	database: Kysely<Database>,
	coachId: string,
	value: 'open' | 'invitation'
): Promise<boolean> {
	return database.transaction().execute(async (step) => {
		const host = await step
			.selectFrom('coach')
			.select('coach_id')
			.where('coach_id', '=', coachId)
			.where('is_host', '=', 1)
			.executeTakeFirst();
		if (!host) return false;
		await step
			.insertInto('house_setting')
			.values({ name: SIGN_UP, value })
			.onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
			.execute();
		return true;
	});
}

/** Makes this coach the host if there is none. Two who come at once: one of them. */
export async function claimHost(step: Kysely<Database>, coachId: string): Promise<boolean> {
	const { numInsertedOrUpdatedRows } = await step
		.insertInto('house_setting')
		.values({ name: HOST, value: coachId })
		.onConflict((conflict) => conflict.column('name').doNothing())
		.executeTakeFirst();
	return Boolean(numInsertedOrUpdatedRows);
}
