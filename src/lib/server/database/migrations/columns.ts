import type { ColumnDefinitionBuilder, CreateTableBuilder, Kysely } from 'kysely';

/* Ids are text made by the app, times are epoch milliseconds, dates are text (YYYY-MM-DD). */

export const required = (column: ColumnDefinitionBuilder) => column.notNull();
export const key = (column: ColumnDefinitionBuilder) => column.notNull().primaryKey();
export const unique = (column: ColumnDefinitionBuilder) => column.notNull().unique();
export const ofUser = (column: ColumnDefinitionBuilder) =>
	column.notNull().references('user.id').onDelete('cascade');
export const oneOfUser = (column: ColumnDefinitionBuilder) => ofUser(column).primaryKey();

/** A table of rows that go with their runner's user row. */
export function ownedTable(
	database: Kysely<unknown>,
	table: string
): CreateTableBuilder<string, 'id' | 'runner_id'> {
	return database.schema
		.createTable(table)
		.addColumn('id', 'text', key)
		.addColumn('runner_id', 'text', ofUser);
}

export async function index(
	database: Kysely<unknown>,
	table: string,
	column: string
): Promise<void> {
	await database.schema.createIndex(`${table}_${column}_idx`).on(table).column(column).execute();
}
