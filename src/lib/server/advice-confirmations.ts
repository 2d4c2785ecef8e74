import type { Kysely } from 'kysely';
import type { AdviceScope, LocalDate } from '../screening/types.ts';
import * as advice from './advice.ts';
import * as audit from './audit.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as members from './members.ts';
import { passOver } from './readable.ts';
import type { Vault } from './vault.ts';

/** A coach's word that the advice was given as the runner wrote it down. It opens nothing by itself. */
export interface Confirmation {
	readonly adviceId: string;
	readonly coachName: string;
	/** As the coach wrote it on the day of confirming. */
	readonly qualification: string | null;
	/** Epoch milliseconds. */
	readonly confirmedAt: number;
}

/**
 * What a coach may see of an advice: never which reasons it covers, no limit in beats, and not who
 * gave it. Each profession covers few kinds of reason (a midwife a pregnancy), so it would tell why.
 */
export interface SeenAdvice {
	readonly id: string;
	readonly givenOn: LocalDate;
	readonly scope: AdviceScope;
	readonly confirmedBy: readonly Confirmation[];
}

/**
 * The advice of a sharing member, newest first. Null for who is not the coach's to know, or does
 * not share.
 * @throws VaultClosed
 */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<SeenAdvice[] | null> {
	const runnerId = await sharingRunner(database, coachId, groupId, memberId);
	if (runnerId === null) return null;
	const confirmed = await rowsOf(database, runnerId)
		.where('advice_confirmation.member_id', '=', memberId)
		.execute();
	// One that cannot be read closes the runner's result, and the page looks like any other not-today.
	const held = await advice.list(database, vault, runnerId, passOver);
	return held.map(({ id, givenOn, scope }) => ({
		id,
		givenOn,
		scope,
		confirmedBy: confirmed.map(confirmationOf).filter(({ adviceId }) => adviceId === id)
	}));
}

/** A second confirmation in the same group changes nothing: the first coach's name stays. */
export async function confirm(
	database: Kysely<Database>,
	coach: Coach,
	groupId: string,
	memberId: string,
	adviceId: string,
	now: number
): Promise<'confirmed' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const runnerId = await sharingRunner(step, coach.coachId, groupId, memberId);
		if (runnerId === null || !(await isAdviceOf(step, runnerId, adviceId))) return 'not-found';
		const { numInsertedOrUpdatedRows } = await step
			.insertInto('advice_confirmation')
			.values({
				advice_id: adviceId,
				member_id: memberId,
				coach_id: coach.coachId,
				coach_name: coach.name,
				qualification: coach.qualification,
				confirmed_at: now
			})
			.onConflict((conflict) => conflict.columns(['advice_id', 'member_id']).doNothing())
			.executeTakeFirst();
		if (numInsertedOrUpdatedRows) {
			await audit.record(step, runnerId, now, 'advice.confirmed', { adviceId });
		}
		return 'confirmed';
	});
}

/** Any coach of the group may take it back, such as when a helper confirmed the wrong one. */
export async function takeBack(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	adviceId: string,
	now: number
): Promise<'taken-back' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const runnerId = await sharingRunner(step, coachId, groupId, memberId);
		if (runnerId === null) return 'not-found';
		const { numDeletedRows } = await step
			.deleteFrom('advice_confirmation')
			.where('advice_id', '=', adviceId)
			.where('member_id', '=', memberId)
			.executeTakeFirst();
		if (!numDeletedRows) return 'not-found';
		await audit.record(step, runnerId, now, 'advice.unconfirmed', { adviceId });
		return 'taken-back';
	});
}

/** Who confirmed a runner's advice, for the runner, oldest first. */
export async function ofRunner(
	database: Kysely<Database>,
	runnerId: string
): Promise<Confirmation[]> {
	return (await rowsOf(database, runnerId).execute()).map(confirmationOf);
}

async function sharingRunner(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string
): Promise<string | null> {
	const member = await members.find(database, coachId, groupId, memberId);
	return member === null || member.sharedSince === null ? null : member.runnerId;
}

async function isAdviceOf(database: Kysely<Database>, runnerId: string, adviceId: string) {
	const row = await database
		.selectFrom('advice')
		.select('id')
		.where('id', '=', adviceId)
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	return row !== undefined;
}

function rowsOf(database: Kysely<Database>, runnerId: string) {
	return database
		.selectFrom('advice_confirmation')
		.innerJoin('advice', 'advice.id', 'advice_confirmation.advice_id')
		.where('advice.runner_id', '=', runnerId)
		.select(['advice_id', 'coach_name', 'qualification', 'confirmed_at'])
		.orderBy('confirmed_at')
		.orderBy('advice_confirmation.member_id');
}

type Row = Awaited<ReturnType<ReturnType<typeof rowsOf>['executeTakeFirstOrThrow']>>;

function confirmationOf(row: Row): Confirmation {
	return {
		adviceId: row.advice_id,
		coachName: row.coach_name,
		qualification: row.qualification,
		confirmedAt: row.confirmed_at
	};
}
