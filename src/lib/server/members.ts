import { randomUUID } from 'node:crypto';
import type { Kysely, Selectable, SelectQueryBuilder } from 'kysely';
import { foldName } from '../forms/person-name.ts';
import * as audit from './audit.ts';
import { byName } from './by-name.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { deleteUnreachable } from './unreachable.ts';

/** Somebody on a group's list. */
export interface Member {
	readonly id: string;
	readonly groupId: string;
	/** The runner behind the name; null while it is a name alone. */
	readonly runnerId: string | null;
	readonly name: string;
	readonly addedAt: number;
	readonly joinedAt: number | null;
	/** Since when the runner agrees that the coaches see the result; null when they do not. */
	readonly sharedSince: number | null;
}

/**
 * Everybody who is in the group now, by name: never by anything that a runner does. Of one name, who
 * joined first comes first.
 */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<Member[]> {
	const rows = await present(database, coachId, groupId)
		.selectAll('member')
		.orderBy('joined_at')
		.execute();
	return byName(rows.map(memberOf));
}

/** Null for who is not in the group, or not the coach's to know. */
export async function find(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<Member | null> {
	const row = await present(database, coachId, groupId)
		.where('member.id', '=', memberId)
		.selectAll('member')
		.executeTakeFirst();
	return row ? memberOf(row) : null;
}

/** How many are in each of the coach's groups. */
export async function counts(
	database: Kysely<Database>,
	coachId: string
): Promise<ReadonlyMap<string, number>> {
	const rows = await isPresent(database.selectFrom('member'))
		.where('member.group_id', 'in', groups.idsOf(database, coachId))
		.select(['member.group_id', (of) => of.fn.countAll<number>().as('count')])
		.groupBy('member.group_id')
		.execute();
	return new Map(rows.map((row) => [row.group_id, Number(row.count)]));
}

export async function rename(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	name: string
): Promise<'renamed' | 'known' | 'not-found'> {
	const folded = foldName(name);
	const all = await list(database, coachId, groupId);
	if (all.some((one) => one.id !== memberId && foldName(one.name) === folded)) return 'known';
	const { numUpdatedRows } = await database
		.updateTable('member')
		.set({ name })
		.where('id', 'in', present(database, coachId, groupId).select('member.id'))
		.where('id', '=', memberId)
		.executeTakeFirst();
	return numUpdatedRows ? 'renamed' : 'not-found';
}

/**
 * Takes somebody off the list; only owners do. A runner keeps the account and sees that it
 * happened. Attendance stays, under the name.
 */
export async function remove(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	now: number
): Promise<'removed' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const row = await present(step, coachId, groupId)
			.where('member.group_id', 'in', groups.idsOwnedBy(step, coachId))
			.where('member.id', '=', memberId)
			.selectAll('member')
			.executeTakeFirst();
		if (!row) return 'not-found';
		if (row.runner_id === null) {
			await step.deleteFrom('member').where('id', '=', memberId).execute();
			return 'removed';
		}
		await step
			.updateTable('member')
			.set({ left_at: now, shared_since: null })
			.where('id', '=', memberId)
			.execute();
		await audit.record(step, row.runner_id, now, 'group.removed', { groupId, memberId });
		await deleteUnreachable(step, [row.runner_id], now);
		return 'removed';
	});
}

/** Puts names on the list. The caller has asked whose group it is. */
export async function add(
	step: Kysely<Database>,
	groupId: string,
	names: readonly string[],
	now: number
): Promise<string[]> {
	const rows = names.map((name) => ({
		id: randomUUID(),
		group_id: groupId,
		name,
		added_at: now
	}));
	if (rows.length > 0) await step.insertInto('member').values(rows).execute();
	return rows.map(({ id }) => id);
}

/** Not left, and not what an account that was deleted leaves behind. */
export function isPresent<Row>(query: SelectQueryBuilder<Database, 'member', Row>) {
	return query
		.where('member.left_at', 'is', null)
		.where(({ or, eb }) =>
			or([eb('member.runner_id', 'is not', null), eb('member.joined_at', 'is', null)])
		);
}

function present(database: Kysely<Database>, coachId: string, groupId: string) {
	return isPresent(database.selectFrom('member'))
		.where('member.group_id', '=', groupId)
		.where('member.group_id', 'in', groups.idsOf(database, coachId));
}

function memberOf(row: Selectable<Database['member']>): Member {
	return {
		id: row.id,
		groupId: row.group_id,
		runnerId: row.runner_id,
		name: row.name,
		addedAt: row.added_at,
		joinedAt: row.joined_at,
		sharedSince: row.shared_since
	};
}
