import type { Kysely } from 'kysely';
import * as audit from './audit.ts';
import type { Database } from './database/tables.ts';
import * as guesses from './guesses.ts';
import * as pastPulses from './past-pulses.ts';
import * as profiles from './profiles.ts';
import type { Vault } from './vault.ts';

/**
 * Deletes every stored pulse of a runner, for a result that turns pulse off: they could be wrong for
 * this person, and what is not held cannot leak. What cannot be opened is emptied unread, so that no
 * spoilt row keeps a stricter result from being stored.
 * @throws VaultClosed
 */
export async function forgetPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
): Promise<void> {
	const wereHeld = [
		await profiles.forgetPulses(database, vault, runnerId, now),
		await guesses.forgetPulses(database, vault, runnerId),
		await pastPulses.forgetPulses(database, vault, runnerId)
	];
	if (wereHeld.includes(true)) await audit.record(database, runnerId, now, 'pulses.forgotten');
}
