import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { readEach, readJson, type Note } from './readable.ts';

/** What happened to a runner's record. Ids, versions and times; never an answer, never a status. */
export type AuditWhat =
	| 'consent.given'
	| 'consent.withdrawn'
	| 'result.stored'
	| 'result.invalidated'
	| 'result.loosened'
	| 'event.recorded'
	| 'event.withdrawn'
	| 'advice.recorded'
	| 'advice.removed'
	| 'pulses.forgotten'
	| 'device.linked'
	| 'tablet.returned'
	| 'session.revoked'
	| 'passkey.removed'
	| 'password.changed'
	| 'password.reset'
	| 'group.joined'
	| 'group.left'
	| 'group.removed'
	| 'group.ended'
	| 'sharing.given'
	| 'sharing.withdrawn'
	| 'contact.kept'
	| 'contact.removed'
	| 'contact.read'
	| 'bands.set'
	| 'advice.confirmed'
	| 'advice.unconfirmed'
	| 'step.set';

export type AuditDetail = Readonly<Record<string, string | number>>;

export interface AuditEntry {
	readonly id: string;
	readonly at: number;
	readonly what: string;
	readonly detail: AuditDetail;
}

export async function record(
	database: Kysely<Database>,
	runnerId: string,
	now: number,
	what: AuditWhat,
	detail: AuditDetail = {}
): Promise<void> {
	await database
		.insertInto('audit')
		.values({
			id: randomUUID(),
			runner_id: runnerId,
			at: now,
			what,
			detail: JSON.stringify(detail)
		})
		.execute();
}

/** The runner's own list, newest first. */
export async function list(
	database: Kysely<Database>,
	runnerId: string,
	note?: Note
): Promise<AuditEntry[]> {
	const rows = await database
		.selectFrom('audit')
		.select(['id', 'at', 'what', 'detail'])
		.where('runner_id', '=', runnerId)
		.orderBy('at', 'desc')
		.orderBy('id')
		.execute();
	return readEach(rows, entryOf, (row) => row.at, note);
}

function entryOf(row: Omit<AuditEntry, 'detail'> & { readonly detail: string }): AuditEntry {
	return { ...row, detail: readJson(row.detail, 'audit') as AuditDetail };
}
