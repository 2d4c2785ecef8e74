import type { Kysely } from 'kysely';
import { z } from 'zod';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';
import * as groupOutings from './group-outings.ts';
import * as members from './members.ts';
import { readOr, type Missed, type Note } from './readable.ts';
import * as readings from './readings.ts';
import type { Place, Vault } from './vault.ts';

const shape = z.strictObject({
	name: z.string().max(60),
	phone: z.string().max(16),
	relation: z.string().max(40).nullable()
});

/** Whom to call for a runner. */
export type Contact = z.infer<typeof shape>;

/** @throws VaultClosed */
export async function keep(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	contact: Contact,
	now: number
): Promise<void> {
	const row = { sealed: vault.seal(placeOf(runnerId), shape.parse(contact)), updated_at: now };
	await database
		.insertInto('emergency_contact')
		.values({ ...row, runner_id: runnerId })
		.onConflict((conflict) => conflict.column('runner_id').doUpdateSet(row))
		.execute();
	await audit.record(database, runnerId, now, 'contact.kept');
}

export async function remove(
	database: Kysely<Database>,
	runnerId: string,
	now: number
): Promise<void> {
	const { numDeletedRows } = await database
		.deleteFrom('emergency_contact')
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	if (numDeletedRows) await audit.record(database, runnerId, now, 'contact.removed');
}

/**
 * The runner's own, or null.
 * @throws VaultClosed, Unreadable
 */
export async function own(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<Contact | null> {
	const row = await database
		.selectFrom('emergency_contact')
		.select('sealed')
		.where('runner_id', '=', runnerId)
		.executeTakeFirst();
	return row ? vault.unseal(placeOf(runnerId), row.sealed, shape) : null;
}

export interface ContactForCoach {
	readonly memberName: string;
	/** Null where the runner gave none, or where it cannot be read. */
	readonly contact: Contact | null;
	readonly isUnreadable: boolean;
}

/**
 * For a coach of the group, of a runner who shares, while an outing of the group is on; null
 * otherwise. Each reading is written down for the runner.
 * @throws VaultClosed, Unreadable
 */
export async function forCoach(
	database: Kysely<Database>,
	vault: Vault,
	reader: readings.Reader,
	memberId: string,
	now: number
): Promise<ContactForCoach | null> {
	const { coach, group } = reader;
	if (!(await groupOutings.current(database, coach.coachId, group.id, now))) return null;
	const member = await members.find(database, coach.coachId, group.id, memberId);
	if (!member || member.runnerId === null || member.sharedSince === null) return null;
	const { runnerId } = member;
	const missed: Missed[] = [];
	// In an emergency the page still has to give the number to call.
	const note: Note = (row) => missed.push(row);
	const contact = await readOr(() => own(database, vault, runnerId), null, note);
	if (contact !== null) {
		await readings.record(database, reader, [runnerId], 'contact', now);
		await audit.record(database, runnerId, now, 'contact.read', { groupId: group.id });
	}
	return { memberName: member.name, contact, isUnreadable: missed.length > 0 };
}

function placeOf(runnerId: string): Place {
	return { table: 'emergency_contact', owner: runnerId, row: runnerId };
}
