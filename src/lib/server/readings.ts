import { createHash } from 'node:crypto';
import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import type { GroupOf } from './groups.ts';

/** What a coach looked at. */
export type ReadingWhat = 'result' | 'bands' | 'contact';

/** That a coach looked at something of a runner, for the runner to see. */
export interface Reading {
	readonly id: string;
	readonly coachName: string;
	readonly groupName: string;
	readonly what: string;
	/** When they first looked on that day, how often, and when the last time. */
	readonly at: number;
	readonly times: number;
	readonly lastAt: number;
}

export interface Reader {
	readonly coach: Pick<Coach, 'coachId' | 'name'>;
	readonly group: Pick<GroupOf, 'id' | 'name' | 'timeZone'>;
}

const KEPT_MS = 400 * 24 * 60 * 60 * 1000;

/**
 * Writes down that a coach looked: one row a coach, group, runner, kind and day where the group is,
 * which counts the times; but a row for each single time for an emergency contact.
 */
export async function record(
	database: Kysely<Database>,
	{ coach, group }: Reader,
	runnerIds: readonly string[],
	what: ReadingWhat,
	now: number
): Promise<void> {
	if (runnerIds.length === 0) return;
	const when = what === 'contact' ? now : localDate(now, group.timeZone);
	const rows = runnerIds.map((runnerId) => ({
		// What makes two readings the same is its key. A hash, for the coach may be forgotten later.
		id: createHash('sha256')
			.update(JSON.stringify([runnerId, coach.coachId, group.id, what, when]))
			.digest('base64url'),
		runner_id: runnerId,
		coach_id: coach.coachId,
		coach_name: coach.name,
		group_name: group.name,
		what,
		at: now,
		times: 1,
		last_at: now
	}));
	await database
		.insertInto('result_reading')
		.values(rows)
		.onConflict((conflict) =>
			conflict.column('id').doUpdateSet((read) => ({
				times: read('result_reading.times', '+', 1),
				last_at: now
			}))
		)
		.execute();
}

/** Who looked, newest first. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<Reading[]> {
	const rows = await database
		.selectFrom('result_reading')
		.select(['id', 'coach_name', 'group_name', 'what', 'at', 'times', 'last_at'])
		.where('runner_id', '=', runnerId)
		.orderBy('last_at', 'desc')
		.orderBy('id')
		.execute();
	return rows.map((row) => ({
		id: row.id,
		coachName: row.coach_name,
		groupName: row.group_name,
		what: row.what,
		at: row.at,
		times: row.times,
		lastAt: row.last_at
	}));
}

/** Forgets what is older than any result that was read. */
export async function sweep(database: Kysely<Database>, now: number): Promise<void> {
	await database
		.deleteFrom('result_reading')
		.where('at', '<=', now - KEPT_MS)
		.execute();
}
