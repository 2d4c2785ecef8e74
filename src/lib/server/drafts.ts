import type { Kysely, Selectable } from 'kysely';
import type { Answer, Answers } from '../screening/types.ts';
import * as consents from './consents.ts';
import { violation } from './database/errors.ts';
import type { Database } from './database/tables.ts';
import type { Note } from './readable.ts';
import * as results from './results.ts';
import * as shapes from './shapes.ts';
import { Unreadable, type Place, type Vault } from './vault.ts';

const LIFETIME_MS = 7 * 24 * 60 * 60 * 1000;
const TRIES = 5;

/** Answers while the form is open. They end with the form, or seven days after its first answer. */
export interface Draft {
	readonly answers: Answers;
	readonly rulesetId: string;
	/** Goes up by one with each answer. */
	readonly revision: number;
	readonly startedAt: number;
	/** When the question about right now was answered. No other answer makes it any newer. */
	readonly urgentAt: number;
	readonly expiresAt: number;
}

export type Saved =
	| { readonly kind: 'saved'; readonly draft: Draft }
	/** Another tab was faster, or the rule set changed meanwhile. Nothing was written. */
	| { readonly kind: 'stale'; readonly draft: Draft | null };

export interface OneAnswer {
	readonly questionId: string;
	/** Undefined takes the answer back. */
	readonly answer: Answer | undefined;
	/** True for the question about right now. */
	readonly aboutNow?: boolean;
	readonly rulesetId: string;
	/** The revision that the page was drawn from (0 without a draft), or null to write over any. */
	readonly revision: number | null;
}

/**
 * The open answers, or null. Those that ended, or that cannot be read, are deleted on the way; where
 * somebody takes a note of what cannot be read, they are left to be found again.
 */
export async function load(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number,
	note?: Note
): Promise<Draft | null> {
	const row = await database
		.selectFrom('screening_draft')
		.selectAll()
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	if (!row) return null;
	try {
		if (row.expires_at > now) return draftOf(row, vault);
	} catch (error) {
		// Starting again is safe; guessing at an answer is not.
		if (!(error instanceof Unreadable)) throw error;
		if (note) {
			note({ table: error.table, at: row.started_at });
			return null;
		}
	}
	await take(database, runnerId, row.revision);
	return null;
}

/**
 * Writes one answer.
 * @throws ConsentMissing, VaultClosed
 */
export async function save(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	one: OneAnswer,
	now: number
): Promise<Saved> {
	await consents.need(database, runnerId);
	for (let attempt = 0; attempt < TRIES; attempt += 1) {
		const before = await load(database, vault, runnerId, now);
		const expected = before?.revision ?? 0;
		if (before && before.rulesetId !== one.rulesetId) return { kind: 'stale', draft: before };
		if (one.revision !== null && one.revision !== expected) return { kind: 'stale', draft: before };
		const draft = changed(before, one, now);
		if (await write(database, vault, runnerId, draft, expected)) {
			if (!one.aboutNow) await results.answeredAgain(database, runnerId, draft.startedAt, now);
			return { kind: 'saved', draft };
		}
	}
	return { kind: 'stale', draft: await load(database, vault, runnerId, now) };
}

export async function discard(database: Kysely<Database>, runnerId: string): Promise<void> {
	await database.deleteFrom('screening_draft').where('runner_id', '=', runnerId).execute();
}

/** Deletes the answers if they are still at this revision; false when somebody was faster. */
export async function take(
	database: Kysely<Database>,
	runnerId: string,
	revision: number
): Promise<boolean> {
	const { numDeletedRows } = await database
		.deleteFrom('screening_draft')
		.where('runner_id', '=', runnerId)
		.where('revision', '=', revision)
		.executeTakeFirst();
	return numDeletedRows > 0n;
}

function changed(before: Draft | null, one: OneAnswer, now: number): Draft {
	return {
		answers: shapes.answers.parse(withAnswer(before?.answers ?? {}, one)),
		rulesetId: one.rulesetId,
		revision: (before?.revision ?? 0) + 1,
		startedAt: before?.startedAt ?? now,
		urgentAt: before && !one.aboutNow ? before.urgentAt : now,
		expiresAt: before?.expiresAt ?? now + LIFETIME_MS
	};
}

function withAnswer(answers: Answers, { questionId, answer }: OneAnswer): Answers {
	shapes.questionId.parse(questionId);
	const rest = Object.entries(answers).filter(([id]) => id !== questionId);
	return Object.fromEntries(answer === undefined ? rest : [...rest, [questionId, answer]]);
}

/** False when somebody else wrote first. */
async function write(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	draft: Draft,
	expected: number
): Promise<boolean> {
	const row = {
		sealed: vault.seal(placeOf(runnerId), draft.answers),
		revision: draft.revision,
		urgent_at: draft.urgentAt
	};
	if (expected > 0) {
		const { numUpdatedRows } = await database
			.updateTable('screening_draft')
			.set(row)
			.where('runner_id', '=', runnerId)
			.where('revision', '=', expected)
			.executeTakeFirst();
		return numUpdatedRows > 0n;
	}
	try {
		await database
			.insertInto('screening_draft')
			.values({
				...row,
				runner_id: runnerId,
				ruleset_id: draft.rulesetId,
				started_at: draft.startedAt,
				expires_at: draft.expiresAt
			})
			.execute();
		return true;
	} catch (error) {
		if (violation(error) !== 'unique') throw error;
		return false;
	}
}

function draftOf(row: Selectable<Database['screening_draft']>, vault: Vault): Draft {
	return {
		answers: vault.unseal(placeOf(row.runner_id), row.sealed, shapes.answers),
		rulesetId: row.ruleset_id,
		revision: row.revision,
		startedAt: row.started_at,
		urgentAt: row.urgent_at,
		expiresAt: row.expires_at
	};
}

function placeOf(runnerId: string): Place {
	return { table: 'screening_draft', owner: runnerId, row: runnerId };
}
