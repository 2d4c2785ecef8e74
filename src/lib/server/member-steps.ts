import { randomUUID } from 'node:crypto';
import type { Kysely, Selectable } from 'kysely';
import * as audit from './audit.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';
import { isPlaceShared, sharesPlace } from './shares-place.ts';

/** Where a member stands in the group's programme. */
export interface MemberStep {
	readonly memberId: string;
	/** Outings behind the group below zero, ahead of it above. */
	readonly outingsAhead: number;
	readonly setAt: number;
	readonly setByName: string;
}

/** As long as the longest programme: 20 weeks of 4 outings. */
export const FARTHEST_STEP = 80;

/**
 * Only those who stand elsewhere than the group; empty for who is not a coach of it. Of a runner who
 * does not share it is not the coach's to know.
 */
export async function list(
	database: Kysely<Database>,
	coachId: string,
	groupId: string
): Promise<MemberStep[]> {
	const rows = await database
		.selectFrom('member_step')
		.innerJoin('programme', 'programme.id', 'member_step.programme_id')
		.innerJoin('group_coach', 'group_coach.group_id', 'programme.group_id')
		.innerJoin('member', 'member.id', 'member_step.member_id')
		.where('group_coach.coach_id', '=', coachId)
		.where('programme.group_id', '=', groupId)
		.where('programme.ended_at', 'is', null)
		.where(isPlaceShared)
		.selectAll('member_step')
		.execute();
	return rows.map(stepOf);
}

/** Where a runner stands in the programmes of their groups, for the runner's own data file. */
export async function ofRunner(
	database: Kysely<Database>,
	runnerId: string
): Promise<MemberStep[]> {
	const rows = await database
		.selectFrom('member_step')
		.innerJoin('member', 'member.id', 'member_step.member_id')
		.where('member.runner_id', '=', runnerId)
		.selectAll('member_step')
		.orderBy('set_at')
		.orderBy('member_id')
		.execute();
	return rows.map(stepOf);
}

/** Every change of a member's step in the programme that the group follows, newest first; as `list`. */
export async function history(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<MemberStep[]> {
	const rows = await database
		.selectFrom('member_step_change')
		.innerJoin('programme', 'programme.id', 'member_step_change.programme_id')
		.innerJoin('group_coach', 'group_coach.group_id', 'programme.group_id')
		.innerJoin('member', 'member.id', 'member_step_change.member_id')
		.where('group_coach.coach_id', '=', coachId)
		.where('programme.group_id', '=', groupId)
		.where('programme.ended_at', 'is', null)
		.where('member_step_change.member_id', '=', memberId)
		.where(isPlaceShared)
		.selectAll('member_step_change')
		.orderBy('set_at', 'desc')
		.execute();
	return rows.map(stepOf);
}

/** The same of a runner in all programmes, for the runner's own data file. */
export async function changesOfRunner(
	database: Kysely<Database>,
	runnerId: string
): Promise<MemberStep[]> {
	const rows = await database
		.selectFrom('member_step_change')
		.innerJoin('member', 'member.id', 'member_step_change.member_id')
		.where('member.runner_id', '=', runnerId)
		.selectAll('member_step_change')
		.orderBy('set_at')
		.orderBy('member_id')
		.execute();
	return rows.map(stepOf);
}

/** What a coach saw of a member's step before setting another one. */
export interface SeenStep {
	readonly programmeId: string;
	/** How often it had been changed. */
	readonly changes: number;
}

/**
 * Puts a member at another place of the programme than the group; zero puts them back. Whoever leads
 * may, as long as the runner shares. The runner finds it in their own list of what happened.
 * @param words.seen where they stood when the coach looked; left out, wherever they stand
 * @throws RangeError for what is no whole number of outings of a programme
 */
export async function set(
	database: Kysely<Database>,
	coach: Pick<Coach, 'coachId' | 'name'>,
	groupId: string,
	{ memberId, outingsAhead, seen }: StepWords,
	now: number
): Promise<'set' | 'changed-meanwhile' | 'not-found'> {
	if (!Number.isInteger(outingsAhead) || Math.abs(outingsAhead) > FARTHEST_STEP) {
		throw new RangeError('set requires whole outings of a programme');
	}
	return database.transaction().execute(async (step) => {
		await groups.hold(step, groupId);
		const member = await members.find(step, coach.coachId, groupId, memberId);
		const programme = await step
			.selectFrom('programme')
			.select('id')
			.where('group_id', '=', groupId)
			.where('ended_at', 'is', null)
			.executeTakeFirst();
		if (member === null || programme === undefined || !sharesPlace(member)) return 'not-found';
		const at = { programme_id: programme.id, member_id: memberId };
		const changes = await changesAt(step, at);
		if (seen !== undefined) {
			const isSame = seen.changes === changes.length;
			if (seen.programmeId !== programme.id || !isSame) return 'changed-meanwhile';
		}
		// Two changes never have the same time, so one of them is the newest.
		const setAt = Math.max(now, (changes[0]?.set_at ?? 0) + 1);
		const words = { outings_ahead: outingsAhead, set_at: setAt, set_by_name: coach.name };
		if (outingsAhead === 0) {
			await step
				.deleteFrom('member_step')
				.where('programme_id', '=', programme.id)
				.where('member_id', '=', memberId)
				.execute();
		} else {
			await step
				.insertInto('member_step')
				.values({ ...at, ...words })
				.onConflict((conflict) =>
					conflict.columns(['programme_id', 'member_id']).doUpdateSet(words)
				)
				.execute();
		}
		await step
			.insertInto('member_step_change')
			.values({ ...at, ...words, id: randomUUID() })
			.execute();
		if (member.runnerId !== null) {
			await audit.record(step, member.runnerId, now, 'step.set', { groupId, outingsAhead });
		}
		return 'set';
	});
}

type StepWords = Pick<MemberStep, 'memberId' | 'outingsAhead'> & { readonly seen?: SeenStep };

async function changesAt(
	step: Kysely<Database>,
	at: Pick<Database['member_step_change'], 'programme_id' | 'member_id'>
) {
	return step
		.selectFrom('member_step_change')
		.select('set_at')
		.where('programme_id', '=', at.programme_id)
		.where('member_id', '=', at.member_id)
		.orderBy('set_at', 'desc')
		.execute();
}

type StepRow = Pick<
	Selectable<Database['member_step']>,
	'member_id' | 'outings_ahead' | 'set_at' | 'set_by_name'
>;

function stepOf(row: StepRow): MemberStep {
	return {
		memberId: row.member_id,
		outingsAhead: row.outings_ahead,
		setAt: row.set_at,
		setByName: row.set_by_name
	};
}
