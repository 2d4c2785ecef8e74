import type { Kysely } from 'kysely';
import { foldName } from '../forms/person-name.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';

/** Which of these names the group does not have yet. Names that it has are left as they are. */
export async function compare(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	names: readonly string[]
): Promise<{ readonly fresh: string[]; readonly known: string[] }> {
	const present = await members.list(database, coachId, groupId);
	const folded = new Set(present.map(({ name }) => foldName(name)));
	const isKnown = (name: string) => folded.has(foldName(name));
	return { fresh: names.filter((name) => !isKnown(name)), known: names.filter(isKnown) };
}

/** Adds the names that the group does not have yet: all of them, or none. */
export async function addNames(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	names: readonly string[],
	now: number
): Promise<{ readonly kind: 'added'; readonly count: number } | { readonly kind: 'not-found' }> {
	return database.transaction().execute(async (step) => {
		const group = await groups.ofCoach(step, coachId, groupId);
		if (!group || !(await groups.hold(step, groupId))) return { kind: 'not-found' };
		const { fresh } = await compare(step, coachId, groupId, names);
		const ids = await members.add(step, groupId, fresh, now);
		return { kind: 'added', count: ids.length };
	});
}
