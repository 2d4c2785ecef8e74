import { randomUUID } from 'node:crypto';
import type { Kysely, Selectable } from 'kysely';
import type { PhaseKind } from '../outing/phase.ts';
import { phaseShape } from './band-setting-rows.ts';
import type { Database } from './database/tables.ts';
import * as members from './members.ts';

export type Feels = Database['band_doubt']['feels'];

/** "This feels wrong", said by a runner about a phase. */
export interface BandDoubt {
	readonly id: string;
	readonly memberId: string;
	readonly phase: PhaseKind;
	readonly feels: Feels;
	/** Epoch milliseconds. */
	readonly saidAt: number;
	readonly seenAt: number | null;
}

/**
 * Tells the coaches of every group that the runner shares with. Said again before a coach has seen
 * it, it takes the place of what was said before. Answers how many groups it went to.
 */
export async function say(
	database: Kysely<Database>,
	runnerId: string,
	phase: PhaseKind,
	feels: Feels,
	now: number
): Promise<number> {
	return database.transaction().execute(async (step) => {
		const mine = await sharing(step, runnerId).select('member.id').execute();
		for (const { id } of mine) {
			await step
				.deleteFrom('band_doubt')
				.where('member_id', '=', id)
				.where('phase', '=', phase)
				.where('seen_at', 'is', null)
				.execute();
			await step
				.insertInto('band_doubt')
				.values({ id: randomUUID(), member_id: id, phase, feels, said_at: now })
				.execute();
		}
		return mine.length;
	});
}

/** Whether anybody would hear it. */
export async function hasListener(database: Kysely<Database>, runnerId: string): Promise<boolean> {
	return (await sharing(database, runnerId).select('member.id').executeTakeFirst()) !== undefined;
}

/** What a runner said, newest first. */
export async function ofRunner(database: Kysely<Database>, runnerId: string): Promise<BandDoubt[]> {
	const rows = await database
		.selectFrom('band_doubt')
		.innerJoin('member', 'member.id', 'band_doubt.member_id')
		.where('member.runner_id', '=', runnerId)
		.selectAll('band_doubt')
		.orderBy('said_at', 'desc')
		.orderBy('band_doubt.id')
		.execute();
	return rows.map(doubtOf);
}

/** What the sharing members of a coach's group said, newest first; empty for who is not a coach of it. */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<BandDoubt[]> {
	const rows = await heard(database, coachId, groupId)
		.selectAll('band_doubt')
		.orderBy('said_at', 'desc')
		.orderBy('band_doubt.id')
		.execute();
	return rows.map(doubtOf);
}

export async function markSeen(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	doubtId: string,
	now: number
): Promise<'seen' | 'not-found'> {
	const mine = await heard(database, coachId, groupId)
		.select('band_doubt.id')
		.where('band_doubt.id', '=', doubtId)
		.executeTakeFirst();
	if (mine === undefined) return 'not-found';
	await database
		.updateTable('band_doubt')
		.set({ seen_at: now })
		.where('id', '=', doubtId)
		.where('seen_at', 'is', null)
		.execute();
	return 'seen';
}

function sharing(database: Kysely<Database>, runnerId: string) {
	return members
		.isPresent(database.selectFrom('member'))
		.where('member.runner_id', '=', runnerId)
		.where('member.shared_since', 'is not', null);
}

function heard(database: Kysely<Database>, coachId: string, groupId: string) {
	return database
		.selectFrom('band_doubt')
		.innerJoin('member', 'member.id', 'band_doubt.member_id')
		.innerJoin('group_coach', 'group_coach.group_id', 'member.group_id')
		.where('group_coach.coach_id', '=', coachId)
		.where('member.group_id', '=', groupId)
		.where('member.left_at', 'is', null)
		.where('member.runner_id', 'is not', null)
		.where('member.shared_since', 'is not', null);
}

function doubtOf(row: Selectable<Database['band_doubt']>): BandDoubt {
	return {
		id: row.id,
		memberId: row.member_id,
		phase: phaseShape.parse(row.phase),
		feels: row.feels,
		saidAt: row.said_at,
		seenAt: row.seen_at
	};
}
