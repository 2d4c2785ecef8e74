import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import { TAKE_BACK_MS } from '../screening/event-stands.ts';
import type { HealthEvent } from '../screening/types.ts';
import * as audit from './audit.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import { readEach, type Note } from './readable.ts';
import * as shapes from './shapes.ts';
import type { Place, Vault } from './vault.ts';

export { TAKE_BACK_MS as WITHDRAW_WITHIN_MS } from '../screening/event-stands.ts';

export interface RecordedEvent extends HealthEvent, shapes.EventWords {}

export interface NewEvent extends shapes.EventWords {
	/** Earlier than now when a phone without a network tells it later. Never later than now. */
	readonly happenedAt: number;
	/** IANA name of the runner's zone. */
	readonly timeZone: string;
}

/**
 * Keeps an urgent sign as the reason R-EVENT. It outlives its form: only advice lifts it.
 * @throws ConsentMissing, VaultClosed
 */
export async function record(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	event: NewEvent,
	now: number
): Promise<RecordedEvent> {
	await consents.need(database, runnerId);
	const { happenedAt, timeZone, ...words } = event;
	const id = randomUUID();
	const at = Math.min(happenedAt, now);
	const row = { id, runner_id: runnerId, happened_at: at, happened_on: localDate(at, timeZone) };
	const sealed = vault.seal(placeOf(runnerId, id), shapes.event.parse(words));
	await database
		.insertInto('health_event')
		.values({ ...row, sealed })
		.execute();
	await audit.record(database, runnerId, now, 'event.recorded', { eventId: id });
	return { ...words, id, happenedAt: at, happenedOn: row.happened_on, withdrawnAt: null };
}

/** Takes an event back that was ticked by mistake, within ten minutes, and keeps that it was. */
export async function withdraw(
	database: Kysely<Database>,
	runnerId: string,
	eventId: string,
	now: number
): Promise<'withdrawn' | 'too-late' | 'not-found'> {
	return database.transaction().execute(async (step) => {
		const { numUpdatedRows } = await step
			.updateTable('health_event')
			.set({ withdrawn_at: now })
			.where('id', '=', eventId)
			.where('runner_id', '=', runnerId)
			.where('withdrawn_at', 'is', null)
			.where('happened_at', '>=', now - TAKE_BACK_MS)
			.executeTakeFirst();
		if (numUpdatedRows) {
			await audit.record(step, runnerId, now, 'event.withdrawn', { eventId });
			return 'withdrawn';
		}
		const held = await step
			.selectFrom('health_event')
			.select('id')
			.where('id', '=', eventId)
			.where('runner_id', '=', runnerId)
			.where('withdrawn_at', 'is', null)
			.executeTakeFirst();
		return held ? 'too-late' : 'not-found';
	});
}

/**
 * Newest first, withdrawn ones among them.
 * @throws VaultClosed, Unreadable
 */
export async function list(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	note?: Note
): Promise<RecordedEvent[]> {
	return (await listOfMany(database, vault, [runnerId], note))(runnerId);
}

/** The same for many runners: asked for one that cannot be read, it throws for that one alone. */
export async function listOfMany(
	database: Kysely<Database>,
	vault: Vault,
	runnerIds: readonly string[],
	note?: Note
): Promise<Of<RecordedEvent[]>> {
	const rows = await database
		.selectFrom('health_event')
		.selectAll()
		.where('runner_id', 'in', runnerIds)
		.orderBy('happened_at', 'desc')
		.orderBy('id')
		.execute();
	const of = byRunner(rows);
	const read = (row: (typeof rows)[number]): RecordedEvent => ({
		...vault.unseal(placeOf(row.runner_id, row.id), row.sealed, shapes.event),
		id: row.id,
		happenedAt: row.happened_at,
		happenedOn: row.happened_on,
		withdrawnAt: row.withdrawn_at
	});
	return (runnerId) => readEach(of(runnerId), read, (row) => row.happened_at, note);
}

function placeOf(runnerId: string, id: string): Place {
	return { table: 'health_event', owner: runnerId, row: id };
}
