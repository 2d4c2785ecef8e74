import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { violation } from './database/errors.ts';
import type { Database } from './database/tables.ts';
import { drawCode, hashCode, readCode, shownCode } from './typed-codes.ts';

const LIFETIME_MS = 10 * 60 * 1000;

/**
 * A wrong code may be a guess at any code that lives, so it counts against each of them, wherever
 * it came from. With 29^8 (5 x 10^11) codes, 20 guesses and 100 living codes the chance of a hit is
 * under one in 10^8. A group that mistypes together stays far below 20.
 */
const WRONG_TRIES = 20;

export interface DeviceCode {
	/** As it is shown: XXXX-XXXX. It is stored only as a keyed hash. */
	readonly code: string;
	readonly expiresAt: number;
}

/** Makes a code that signs another device in as this runner. Earlier ones of the runner end. */
export async function create(
	database: Kysely<Database>,
	key: Buffer,
	runnerId: string,
	now: number
): Promise<DeviceCode> {
	const code = drawCode();
	const expiresAt = now + LIFETIME_MS;
	try {
		await database.transaction().execute(async (step) => {
			await step.deleteFrom('device_code').where('runner_id', '=', runnerId).execute();
			const row = { id: randomUUID(), runner_id: runnerId, expires_at: expiresAt, attempts: 0 };
			const code_hash = hashCode(key, code);
			await step
				.insertInto('device_code')
				.values({ ...row, code_hash })
				.execute();
		});
	} catch (error) {
		// Two living codes that are equal: draw again.
		if (violation(error) === 'unique') return create(database, key, runnerId, now);
		throw error;
	}
	return { code: shownCode(code), expiresAt };
}

/**
 * The runner whose code this is, once. Wrong, used, ended and blocked codes all answer null.
 * @param typed as people type it: small letters, spaces and hyphens are forgiven
 */
export async function redeem(
	database: Kysely<Database>,
	key: Buffer,
	typed: string,
	now: number
): Promise<string | null> {
	const row = await database
		.updateTable('device_code')
		.set({ used_at: now })
		.where('code_hash', '=', hashCode(key, readCode(typed)))
		.where('used_at', 'is', null)
		.where('expires_at', '>', now)
		.where('attempts', '<', WRONG_TRIES)
		.returning('runner_id')
		.executeTakeFirst();
	if (row) return row.runner_id;
	await database
		.updateTable('device_code')
		.set((of) => ({ attempts: of('attempts', '+', 1) }))
		.where('used_at', 'is', null)
		.where('expires_at', '>', now)
		.execute();
	return null;
}
