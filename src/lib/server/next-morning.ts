import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { PainLevel, PainPlace } from '../outing/entry.ts';
import { ASKED_FOR_DAYS, morningAfter } from '../outing/morning-after.ts';
import { settleEntries } from '../outing/settle-entries.ts';
import { addDays } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import { append, type Told } from './past-entries.ts';
import { entriesOf, outingsOf } from './past-outings.ts';
import { passOver } from './readable.ts';
import type { Vault } from './vault.ts';

/** The outing after which the runner has to be asked about pain. */
export interface Asked {
	readonly id: string;
	readonly onDate: LocalDate;
}

/**
 * The outing of yesterday, or of some days ago, after which the morning was not yet asked about.
 * Null for none, and for whoever took back the agreement.
 * @throws VaultClosed
 */
export async function asked(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	today: LocalDate
): Promise<Asked | null> {
	if (!(await consents.given(database, runnerId))) return null;
	const found = morningAfter(await recent(database, vault, runnerId, today), today);
	return found && { id: found.id, onDate: found.onDate };
}

/**
 * The outings of these days after which the morning was answered about, wherever that was: a phone
 * that did one of them does not ask again.
 * @throws VaultClosed
 */
export async function answered(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	today: LocalDate
): Promise<string[]> {
	const days = await recent(database, vault, runnerId, today);
	return days.flatMap(({ id, painNextMorning }) => (painNextMorning === null ? [] : [id]));
}

async function recent(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	today: LocalDate
) {
	const rows = await outingsOf(database, runnerId)
		.where('on_date', '<', today)
		.where('on_date', '>=', addDays(today, -ASKED_FOR_DAYS))
		.orderBy('began_at', 'desc')
		.execute();
	const found = [];
	for (const { id, on_date: onDate } of rows) {
		// A line that cannot be read may have been the answer: to be asked again is the careful way.
		const entries = await entriesOf(database, vault, runnerId, id, passOver);
		if (entries.length > 0) found.push({ id, onDate, ...settleEntries(entries) });
	}
	return found;
}

/**
 * Writes down what the morning after an outing was like, as an entry of that outing. New or growing
 * pain stops runs until the runner says that it is gone.
 * @throws ConsentMissing, VaultClosed
 */
export async function say(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	id: string,
	{ level, where }: { readonly level: PainLevel; readonly where: PainPlace | null },
	told: Told
): Promise<'kept' | 'not-found'> {
	const row = await outingsOf(database, runnerId).where('id', '=', id).executeTakeFirst();
	if (!row) return 'not-found';
	const last = (await entriesOf(database, vault, runnerId, id, passOver)).at(-1);
	const entry = {
		id: randomUUID(),
		outingRunId: id,
		at: told.now,
		seq: (last?.seq ?? 0) + 1,
		elapsedMs: last?.elapsedMs ?? 0,
		kind: 'pain-next-morning',
		level,
		where: level === 'none' ? null : where
	} as const;
	await append(database, vault, runnerId, [entry], told);
	return 'kept';
}
