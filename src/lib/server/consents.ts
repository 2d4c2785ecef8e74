import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import * as audit from './audit.ts';
import { byRunner, type Of } from './by-runner.ts';
import type { Database } from './database/tables.ts';
import * as memberships from './memberships.ts';

/** Health answers may be stored only under a consent. Thrown before anything is written. */
export class ConsentMissing extends Error {
	override name = 'ConsentMissing';
	constructor() {
		super('no consent: nothing about health may be stored');
	}
}

export interface Consent {
	readonly id: string;
	readonly kind: 'answers';
	readonly givenAt: number;
	readonly withdrawnAt: number | null;
}

/** Giving it twice changes nothing. */
export async function give(database: Kysely<Database>, runnerId: string, now: number) {
	await database.transaction().execute(async (step) => {
		const { numInsertedOrUpdatedRows } = await step
			.insertInto('consent')
			.values({ id: randomUUID(), runner_id: runnerId, kind: 'answers', given_at: now })
			.onConflict((conflict) =>
				conflict.columns(['runner_id', 'kind']).where('withdrawn_at', 'is', null).doNothing()
			)
			.executeTakeFirst();
		if (numInsertedOrUpdatedRows) await audit.record(step, runnerId, now, 'consent.given');
	});
}

/**
 * Ends the consent, deletes the open answers and stops the sharing with coaches at once. What was concluded stays sealed and shut
 * (an event must not vanish by taking a consent back and giving it again) until the runner deletes
 * the account.
 */
export async function withdraw(database: Kysely<Database>, runnerId: string, now: number) {
	await database.transaction().execute(async (step) => {
		const { numUpdatedRows } = await step
			.updateTable('consent')
			.set({ withdrawn_at: now })
			.where('runner_id', '=', runnerId)
			.where('withdrawn_at', 'is', null)
			.executeTakeFirst();
		await step.deleteFrom('screening_draft').where('runner_id', '=', runnerId).execute();
		await memberships.stopSharing(step, runnerId, now);
		if (numUpdatedRows) await audit.record(step, runnerId, now, 'consent.withdrawn');
	});
}

export async function given(database: Kysely<Database>, runnerId: string): Promise<boolean> {
	return (await givenByMany(database, [runnerId]))(runnerId);
}

/** The same for many runners. */
export async function givenByMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<boolean>> {
	const rows = await database
		.selectFrom('consent')
		.select('runner_id')
		.where('runner_id', 'in', runnerIds)
		.where('kind', '=', 'answers')
		.where('withdrawn_at', 'is', null)
		.execute();
	const of = byRunner(rows);
	return (runnerId) => of(runnerId).length > 0;
}

/** @throws ConsentMissing */
export async function need(database: Kysely<Database>, runnerId: string): Promise<void> {
	if (!(await given(database, runnerId))) throw new ConsentMissing();
}

/** Newest first. */
export async function list(database: Kysely<Database>, runnerId: string): Promise<Consent[]> {
	const rows = await database
		.selectFrom('consent')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.orderBy('given_at', 'desc')
		.execute();
	return rows.map((row) => ({
		id: row.id,
		kind: row.kind,
		givenAt: row.given_at,
		withdrawnAt: row.withdrawn_at
	}));
}
