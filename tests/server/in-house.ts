import { createSecretKey, randomBytes, randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql, Kysely } from 'kysely';
import { afterAll, beforeAll, inject } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import type { DatabaseType } from '$lib/server/database/dialect.ts';
import { migrate } from '$lib/server/database/migrate.ts';
import { openDatabase } from '$lib/server/database/open.ts';
import { postgresDialect } from '$lib/server/database/postgres.ts';
import type { Database } from '$lib/server/database/tables.ts';
import { openVault, type Vault } from '$lib/server/vault.ts';

/** Every server test runs on both. */
export const DATABASES: readonly DatabaseType[] = ['sqlite', 'postgres'];

/** Wednesday 25 November 2026, nine in the morning in Dublin. */
export const NOW = Date.UTC(2026, 10, 25, 9);
export const MINUTE = 60_000;
export const DAY = 24 * 60 * MINUTE;

export const freshKey = () => createSecretKey(randomBytes(32));

interface Place {
	readonly dataFolder: string;
	readonly databaseUrl: string | null;
}

export interface TestDatabase {
	readonly database: Kysely<Database>;
	/** Where it is, for opening it again as another process or a restart would. */
	readonly place: Place;
	drop(): Promise<void>;
}

/** An empty database that nobody else uses. */
export async function emptyDatabase(type: DatabaseType): Promise<TestDatabase> {
	return type === 'sqlite' ? emptySqlite() : emptyPostgres();
}

async function emptySqlite(): Promise<TestDatabase> {
	const folder = mkdtempSync(join(tmpdir(), 'breathmark-sqlite-'));
	const place = { dataFolder: folder, databaseUrl: null };
	const database = await openDatabase(place);
	return {
		database,
		place,
		async drop() {
			await database.destroy();
			rmSync(folder, { recursive: true, force: true });
		}
	};
}

async function emptyPostgres(): Promise<TestDatabase> {
	const name = `test_${randomUUID().replaceAll('-', '')}`;
	const url = new URL(inject('postgresUrl'));
	const maintenance = new Kysely<unknown>({ dialect: await postgresDialect(url.href) });
	await sql`create database ${sql.id(name)}`.execute(maintenance);
	url.pathname = `/${name}`;
	const place = { dataFolder: '', databaseUrl: url.href };
	const database = await openDatabase(place);
	return {
		database,
		place,
		async drop() {
			await database.destroy();
			await sql`drop database ${sql.id(name)} with (force)`.execute(maintenance);
			await maintenance.destroy();
		}
	};
}

/** What a test file works with: filled before its first test, dropped after its last. */
export interface InHouse extends TestDatabase {
	readonly vault: Vault;
	readonly key: ReturnType<typeof freshKey>;
	/** A new runner who gave consent. */
	runner(): Promise<string>;
	/** A new runner who did not. */
	stranger(): Promise<string>;
}

export function inHouse(type: DatabaseType): InHouse {
	const here = { key: freshKey() } as { -readonly [Part in keyof InHouse]: InHouse[Part] };
	beforeAll(async () => {
		Object.assign(here, await emptyDatabase(type));
		await migrate(here.database);
		here.vault = await openVault(here.database, here.key);
		here.stranger = () => makeUser(here.database);
		here.runner = async () => {
			const runnerId = await makeUser(here.database);
			await consents.give(here.database, runnerId, NOW - DAY);
			return runnerId;
		};
	});
	afterAll(() => here.drop());
	return here;
}

export async function makeUser(database: Kysely<Database>, createdAt = NOW): Promise<string> {
	const id = randomUUID();
	const at = new Date(createdAt);
	await database
		.insertInto('user')
		.values({
			id,
			name: 'Runner',
			email: `${id}@runner.invalid`,
			emailVerified: false,
			image: null,
			createdAt: at,
			updatedAt: at,
			isAnonymous: true
		})
		.execute();
	return id;
}
