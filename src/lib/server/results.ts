import type { Kysely, Selectable } from 'kysely';
import { pickNewest } from '../screening/access.ts';
import type { ScreeningResult } from '../screening/types.ts';
import * as audit from './audit.ts';
import { byRunner, type Of } from './by-runner.ts';
import type { Database } from './database/tables.ts';
import { readEach, type Note } from './readable.ts';
import * as shapes from './shapes.ts';
import { Unreadable, type Place, type Vault } from './vault.ts';

/**
 * The result that counts: the newest completion, and of two at the same moment the strictest. An
 * older result that arrives late changes nothing.
 * @throws VaultClosed, Unreadable
 */
export async function newest(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<ScreeningResult | null> {
	return (await newestOfMany(database, vault, [runnerId]))(runnerId);
}

/** The same for many runners: asked for one that cannot be read, it throws for that one alone. */
export async function newestOfMany(
	database: Kysely<Database>,
	vault: Vault,
	runnerIds: readonly string[]
): Promise<Of<ScreeningResult | null>> {
	const rows = await database
		.selectFrom('screening_result as one')
		.selectAll()
		.where('runner_id', 'in', runnerIds)
		.where('completed_at', '=', (sub) =>
			sub
				.selectFrom('screening_result as other')
				.select((of) => of.fn.max('other.completed_at').as('last'))
				.whereRef('other.runner_id', '=', 'one.runner_id')
		)
		.execute();
	const of = byRunner(rows);
	return (runnerId) => pickNewest(of(runnerId).map((row) => resultOf(row, vault)));
}

/**
 * Every result, newest first.
 * @throws VaultClosed, Unreadable
 */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	note?: Note
): Promise<ScreeningResult[]> {
	const rows = await database
		.selectFrom('screening_result')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.orderBy('completed_at', 'desc')
		.orderBy('id')
		.execute();
	const read = (row: (typeof rows)[number]) => resultOf(row, vault);
	return readEach(rows, read, (row) => row.completed_at, note);
}

/**
 * Ends every result of the runner, because their health or their plan changed, and deletes open
 * answers: the questions start blank. Works with the vault closed.
 */
export async function invalidate(
	database: Kysely<Database>,
	runnerId: string,
	now: number
): Promise<void> {
	await database.transaction().execute(async (step) => {
		const { numUpdatedRows } = await step
			.updateTable('screening_result')
			.set({ invalidated_at: now })
			.where('runner_id', '=', runnerId)
			.where('invalidated_at', 'is', null)
			.executeTakeFirst();
		await step.deleteFrom('screening_draft').where('runner_id', '=', runnerId).execute();
		if (numUpdatedRows) await audit.record(step, runnerId, now, 'result.invalidated');
	});
}

/**
 * Ends the results that were there when somebody began to answer again: an answer that was given and
 * left standing must not leave an older, milder result open. Works with the vault closed.
 */
export async function answeredAgain(
	database: Kysely<Database>,
	runnerId: string,
	begunAt: number,
	now: number
): Promise<void> {
	await database
		.updateTable('screening_result')
		.set({ answered_again_at: now })
		.where('runner_id', '=', runnerId)
		.where('answered_again_at', 'is', null)
		.where('completed_at', '<=', begunAt)
		.execute();
}

/** When the runner last said that their health or plan changed, epoch milliseconds, or null. */
export async function changedAt(
	database: Kysely<Database>,
	runnerId: string
): Promise<number | null> {
	return (await changedAtOfMany(database, [runnerId]))(runnerId);
}

/** The same for many runners. */
export async function changedAtOfMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<number | null>> {
	const rows = await database
		.selectFrom('screening_result')
		.select(['runner_id', (of) => of.fn.max('invalidated_at').as('last')])
		.where('runner_id', 'in', runnerIds)
		.groupBy('runner_id')
		.execute();
	const of = byRunner(rows);
	return (runnerId) => of(runnerId)[0]?.last ?? null;
}

/** Writes a finished result. Only a completion calls this. */
export async function store(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	result: ScreeningResult
): Promise<void> {
	const { invalidatedAt, ...kept } = result;
	await database
		.insertInto('screening_result')
		.values({
			id: kept.id,
			runner_id: runnerId,
			completed_at: kept.completedAt,
			completed_on: kept.completedOn,
			time_zone: kept.timeZone,
			ruleset_id: kept.rulesetId,
			ruleset_version: kept.rulesetVersion,
			sealed: vault.seal(placeOf(runnerId, kept.id), shapes.result.parse(kept)),
			invalidated_at: invalidatedAt
		})
		.execute();
}

function placeOf(runnerId: string, id: string): Place {
	return { table: 'screening_result', owner: runnerId, row: id };
}

function resultOf(row: Selectable<Database['screening_result']>, vault: Vault): ScreeningResult {
	const kept = vault.unseal(placeOf(row.runner_id, row.id), row.sealed, shapes.result);
	// The columns only serve queries; one that differs from what was sealed was tampered with.
	if (kept.completedAt !== row.completed_at) throw new Unreadable('screening_result');
	return { ...kept, invalidatedAt: row.invalidated_at ?? row.answered_again_at };
}
