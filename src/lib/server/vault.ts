import type { KeyObject } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { z } from 'zod';
import type { Database } from './database/tables.ts';
import { unwrap, wrap, type Place, type SealingKey } from './envelope.ts';
import { deriveKey } from './keys.ts';

export type { Place } from './envelope.ts';

/** The key at hand is not the one that this database was sealed with. Health data stays shut. */
export class VaultClosed extends Error {
	override name = 'VaultClosed';
	constructor() {
		super('the vault is closed: this database was sealed with another key');
	}
}

/** A sealed value is not what was written there. The message names the table, never the content. */
export class Unreadable extends Error {
	override name = 'Unreadable';
	readonly table: string;
	constructor(table: string) {
		super(`a sealed value in ${table} cannot be read`);
		this.table = table;
	}
}

export interface Vault {
	readonly state: 'right' | 'wrong-key';
	readonly keyId: string;
	/**
	 * Encrypts a JSON value for its place.
	 * @throws VaultClosed with the wrong key
	 */
	seal(place: Place, content: unknown): string;
	/**
	 * Decrypts the value of a place and checks its shape.
	 * @throws VaultClosed with the wrong key
	 * @throws Unreadable when it was moved, changed, or does not have the shape
	 */
	unseal<Content>(place: Place, sealed: string, shape: z.ZodType<Content>): Content;
}

const CHECK: Place = { table: 'vault_check', owner: 'house', row: 'first' };
const CHECK_TEXT = 'this is the key';

/**
 * Opens the vault over a database. The first key that meets a database is its key: a check row is
 * sealed with it, and any other key finds the vault closed while everything else works.
 */
export async function openVault(database: Kysely<Database>, key: KeyObject): Promise<Vault> {
	const sealing: SealingKey = {
		id: deriveKey(key, 'key-id', 8).toString('hex'),
		bytes: deriveKey(key, 'seal')
	};
	await database
		.insertInto('vault_check')
		.values({ id: CHECK.row, key_id: sealing.id, sealed: wrap(sealing, CHECK, CHECK_TEXT) })
		.onConflict((conflict) => conflict.column('id').doNothing())
		.execute();
	const check = await database
		.selectFrom('vault_check')
		.select('sealed')
		.where('id', '=', CHECK.row)
		.executeTakeFirstOrThrow();
	return vaultOf(sealing, unwrap(sealing, CHECK, check.sealed) === CHECK_TEXT);
}

function vaultOf(key: SealingKey, right: boolean): Vault {
	return {
		state: right ? 'right' : 'wrong-key',
		keyId: key.id,
		seal(place, content) {
			if (!right) throw new VaultClosed();
			return wrap(key, place, JSON.stringify(content));
		},
		unseal(place, sealed, shape) {
			if (!right) throw new VaultClosed();
			const text = unwrap(key, place, sealed);
			if (text === null) throw new Unreadable(place.table);
			const read = shape.safeParse(JSON.parse(text));
			if (!read.success) throw new Unreadable(place.table);
			return read.data;
		}
	};
}
