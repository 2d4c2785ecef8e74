import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite';
import { SqliteAdapter, SqliteDialect, type SqliteDatabase } from 'kysely';

const STATEMENTS_KEPT = 500;

/**
 * Node's own SQLite behind Kysely's dialect.
 *
 * Write-ahead log with synchronous FULL: an answer that was acknowledged survives a kill and a
 * power cut. secure_delete overwrites what is deleted with zeros.
 */
export function sqliteDialect(path: string): SqliteDialect {
	const file = new DatabaseSync(path, { timeout: 5000, enableForeignKeyConstraints: true });
	file.exec('pragma journal_mode = wal; pragma synchronous = full; pragma secure_delete = on');
	return new WholeMigrations({ database: prepared(file) });
}

/** SQLite takes tables back with their transaction, so a migration happens whole, once, or not. */
class WholeMigrations extends SqliteDialect {
	override createAdapter(): SqliteAdapter {
		return new WholeMigrationsAdapter();
	}
}

class WholeMigrationsAdapter extends SqliteAdapter {
	override get supportsTransactionalDdl(): boolean {
		return true;
	}
}

function prepared(file: DatabaseSync): SqliteDatabase {
	const statements = new Map<string, StatementSync>();
	return {
		close: () => file.close(),
		prepare(sql) {
			// A transaction takes the write lock at once: two processes queue instead of failing when
			// the second one turns from reading to writing.
			const text = sql === 'begin' ? 'begin immediate' : sql;
			let statement = statements.get(text);
			if (!statement) {
				if (statements.size >= STATEMENTS_KEPT) statements.clear();
				statement = file.prepare(text);
				statements.set(text, statement);
			}
			const kept = statement;
			return {
				reader: kept.columns().length > 0,
				all: (parameters) => kept.all(...parameters.map(bindable)),
				run: (parameters) => kept.run(...parameters.map(bindable)),
				iterate: (parameters) => kept.iterate(...parameters.map(bindable))
			};
		}
	};
}

/** SQLite knows neither dates nor booleans: ISO text and 0 or 1 stand for them. */
function bindable(parameter: unknown): SQLInputValue {
	if (typeof parameter === 'boolean') return Number(parameter);
	if (parameter instanceof Date) return parameter.toISOString();
	return (parameter ?? null) as SQLInputValue;
}
