import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import type { Concluded } from '../screening/concluded.ts';
import type { Answers, ScreeningResult } from '../screening/types.ts';
import * as audit from './audit.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as drafts from './drafts.ts';
import * as events from './events.ts';
import { forgetPulses } from './forget-pulses.ts';
import * as results from './results.ts';
import type { Vault } from './vault.ts';

export { changedAt, changedAtOfMany, invalidate, list, newest, newestOfMany } from './results.ts';

/** What the rules made of the answers. */
export type Decision =
	| { readonly kind: 'result'; readonly result: Concluded; readonly pulseOff: boolean }
	/** Something is missing: the open answers stay. */
	| { readonly kind: 'incomplete' }
	/** Not for adults: the open answers go and nothing is kept. */
	| { readonly kind: 'not-eligible' };

export interface Finish {
	/** The rules, applied to the very answers that are deleted. Pure; may be called more than once. */
	readonly decide: (answers: Answers, rulesetId: string) => Decision;
	/** IANA name of the runner's zone. */
	readonly timeZone: string;
	/** Ids of the answers that were urgent, kept with the event when the result is an emergency. */
	readonly urgentSigns?: (answers: Answers) => readonly string[];
}

export type Completion =
	| { readonly kind: 'stored'; readonly result: ScreeningResult }
	/** The form was finished before (a second press, another tab): what came of it. */
	| { readonly kind: 'already'; readonly result: ScreeningResult }
	| { readonly kind: 'incomplete' }
	| { readonly kind: 'not-eligible' }
	| { readonly kind: 'nothing' };

/**
 * Finishes the form: in one transaction the answers are deleted, the result is kept, an emergency
 * becomes an event, and stored pulses go when the result turns pulse off.
 * @throws ConsentMissing, VaultClosed
 */
export async function complete(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	finish: Finish,
	now: number
): Promise<Completion> {
	await consents.need(database, runnerId);
	for (;;) {
		const draft = await drafts.load(database, vault, runnerId, now);
		if (!draft) {
			const result = await results.newest(database, vault, runnerId);
			return result ? { kind: 'already', result } : { kind: 'nothing' };
		}
		const decision = finish.decide(draft.answers, draft.rulesetId);
		if (decision.kind === 'incomplete') return decision;
		const done = await database.transaction().execute(async (step) => {
			// Whoever deletes this revision of the answers finishes them; an answer that was written
			// meanwhile starts the round again.
			if (!(await drafts.take(step, runnerId, draft.revision))) return null;
			if (decision.kind === 'not-eligible') return decision;
			return keep(step, vault, runnerId, { finish, decision, draft, now });
		});
		if (done) return done;
	}
}

async function keep(
	step: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	{ finish, decision, draft, now }: Ready
): Promise<Completion> {
	const { timeZone } = finish;
	const result: ScreeningResult = {
		...decision.result,
		id: randomUUID(),
		completedAt: now,
		completedOn: localDate(now, timeZone),
		timeZone,
		invalidatedAt: null
	};
	await results.store(step, vault, runnerId, result);
	await audit.record(step, runnerId, now, 'result.stored', {
		resultId: result.id,
		rulesetId: result.rulesetId,
		rulesetVersion: result.rulesetVersion
	});
	if (result.status === 'EMERGENCY') {
		const signs = finish.urgentSigns?.(draft.answers) ?? [];
		const event = { source: 'questions', signs, happenedAt: now, timeZone } as const;
		await events.record(step, vault, runnerId, event, now);
	}
	if (decision.pulseOff) await forgetPulses(step, vault, runnerId, now);
	return { kind: 'stored', result };
}

interface Ready {
	readonly finish: Finish;
	readonly decision: Extract<Decision, { kind: 'result' }>;
	readonly draft: drafts.Draft;
	readonly now: number;
}
