import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { House } from './house.ts';

type Row = Readonly<Record<string, unknown>>;

/** Every row of a table of the house, read straight from its file while the server runs. */
export function rowsOf(house: House, table: string): readonly Row[] {
	return reading(house, (database) => database.prepare(`select * from "${table}"`).all());
}

/** Every row of every table in which one of the columns holds the text. */
export function rowsWith(house: House, text: string): readonly string[] {
	return tablesOf(house).flatMap((table) =>
		rowsOf(house, table)
			.filter((row) => Object.values(row).some((cell) => String(cell).includes(text)))
			.map((row) => `${table}: ${JSON.stringify(row)}`)
	);
}

export function tablesOf(house: House): readonly string[] {
	const list = `select name from sqlite_schema where type = 'table' order by name`;
	return reading(house, (database) => database.prepare(list).all()).map(({ name }) => String(name));
}

function reading<Answer>({ dataFolder }: House, read: (database: DatabaseSync) => Answer): Answer {
	const database = new DatabaseSync(join(dataFolder, 'breathmark.sqlite'), { readOnly: true });
	try {
		return read(database);
	} finally {
		database.close();
	}
}
