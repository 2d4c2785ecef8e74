import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { HOST, isHost } from './hosting.ts';

/** Who may become a coach here: the first one, who becomes the host; anybody; the invited. */
export type SignUp = 'first' | 'open' | 'invitation';

export const SIGN_UP = 'coach-sign-up';

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
	value: Exclude<SignUp, 'first'>
): Promise<boolean> {
	if (!(await isHost(database, coachId))) return false;
	await database
		.insertInto('house_setting')
		.values({ name: SIGN_UP, value })
		.onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
		.execute();
	return true;
}
