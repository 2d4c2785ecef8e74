import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { House } from '../house.ts';

/** Every row of every table, as text, by table. */
type Tables = ReadonlyMap<string, readonly string[]>;

/**
 * The data of a house at one moment. What was changed since can be read, and put back while the
 * server runs, so that hundreds of forms are sent into the same world.
 */
export class Snapshot {
	readonly #database: DatabaseSync;
	readonly #names: readonly string[];
	readonly #before: Tables;

	constructor({ dataFolder }: House) {
		const copy = join(dataFolder, 'as-it-was.sqlite');
		this.#database = new DatabaseSync(join(dataFolder, 'breathmark.sqlite'), { timeout: 5000 });
		this.#database.exec(`vacuum into '${copy}'; attach '${copy}' as was`);
		this.#database.exec('pragma foreign_keys = off; pragma synchronous = off');
		this.#names = this.#database
			.prepare(
				`select name from main.sqlite_schema where type = 'table' and name not like 'sqlite%'`
			)
			.all()
			.map(({ name }) => String(name));
		this.#before = this.#tables();
	}

	/** Rows that are there only now, or were there only then. */
	changes(): readonly string[] {
		const now = this.#tables();
		return this.#names.flatMap((name) => {
			const [was, is] = [new Set(this.#before.get(name)), new Set(now.get(name))];
			return [
				...[...was].filter((row) => !is.has(row)).map((row) => `gone from ${name}: ${row}`),
				...[...is].filter((row) => !was.has(row)).map((row) => `new in ${name}: ${row}`)
			];
		});
	}

	putBack(): void {
		this.#database.exec('begin immediate');
		for (const name of this.#names) {
			this.#database.exec(`delete from main."${name}"`);
			this.#database.exec(`insert into main."${name}" select * from was."${name}"`);
		}
		this.#database.exec('commit');
	}

	close(): void {
		this.#database.close();
	}

	#tables(): Tables {
		return new Map(
			this.#names.map((name) => [
				name,
				this.#database.prepare(`select * from main."${name}"`).all().map(asText)
			])
		);
	}
}

const asText = (row: object) => JSON.stringify(row);
