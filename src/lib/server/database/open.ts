import { accessSync, closeSync, constants, mkdirSync, openSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, sql } from 'kysely';
import { StartRefused } from '../start-refused.ts';
import { postgresDialect } from './postgres.ts';
import { sqliteDialect } from './sqlite.ts';
import type { Database } from './tables.ts';

export const SQLITE_FILE = 'breathmark.sqlite';

/**
 * Opens the database that the environment names: PostgreSQL by its address, or a SQLite file in
 * the data folder. Close it with `destroy()`.
 * @throws StartRefused when the folder cannot be used or the database does not answer
 */
export async function openDatabase(place: {
	dataFolder: string;
	databaseUrl: string | null;
}): Promise<Kysely<Database>> {
	return place.databaseUrl ? openPostgres(place.databaseUrl) : openSqlite(place.dataFolder);
}

function openSqlite(folder: string): Kysely<Database> {
	try {
		mkdirSync(folder, { recursive: true, mode: 0o700 });
		accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
		const path = join(folder, SQLITE_FILE);
		// Names and sessions are not sealed: a new file is for its owner alone, whatever the folder.
		closeSync(openSync(path, 'a', 0o600));
		return new Kysely<Database>({ dialect: sqliteDialect(path) });
	} catch (error) {
		throw new StartRefused(
			`The data folder ${folder} cannot be used (${reasonOf(error)}): set DATA_FOLDER to one that can be written.`
		);
	}
}

async function openPostgres(url: string): Promise<Kysely<Database>> {
	const database = new Kysely<Database>({ dialect: await postgresDialect(url) });
	try {
		await sql`select 1`.execute(database);
		return database;
	} catch (error) {
		await database.destroy();
		// The address holds a password, so it is not repeated.
		throw new StartRefused(`The database at DATABASE_URL does not answer (${reasonOf(error)}).`);
	}
}

function reasonOf(error: unknown): string {
	const { code, errstr } = error as { code?: string; errstr?: string };
	return errstr ?? code ?? 'unknown';
}
