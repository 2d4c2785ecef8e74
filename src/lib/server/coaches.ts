import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';

/** Somebody who leads groups. Has an e-mail and a password, and is never a runner. */
export interface Coach {
	readonly coachId: string;
	readonly name: string;
	/** As the coach writes it. Runners see it where it is used. */
	readonly qualification: string | null;
	/** Looks after this installation: decides who may become a coach. */
	readonly isHost: boolean;
}

/** The coach of this request. */
export interface SignedInCoach extends Coach {
	readonly sessionId: string;
}

export async function find(database: Kysely<Database>, coachId: string): Promise<Coach | null> {
	const row = await database
		.selectFrom('coach')
		.select(['coach_id', 'name', 'qualification', 'is_host'])
		.where('coach_id', '=', coachId)
		.executeTakeFirst();
	if (!row) return null;
	return {
		coachId: row.coach_id,
		name: row.name,
		qualification: row.qualification,
		isHost: row.is_host === 1
	};
}

/** Null for somebody who is no coach any more. */
export async function emailOf(database: Kysely<Database>, coachId: string): Promise<string | null> {
	const row = await database
		.selectFrom('coach')
		.innerJoin('user', 'user.id', 'coach.coach_id')
		.select('user.email')
		.where('coach_id', '=', coachId)
		.executeTakeFirst();
	return row?.email ?? null;
}

export async function change(
	database: Kysely<Database>,
	coachId: string,
	{ name, qualification }: Pick<Coach, 'name' | 'qualification'>
): Promise<void> {
	await database
		.updateTable('coach')
		.set({ name, qualification })
		.where('coach_id', '=', coachId)
		.execute();
}
