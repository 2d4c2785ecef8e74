export type Violation = 'unique' | 'foreign' | 'check';

/** Extended result codes, https://www.sqlite.org/rescode.html (M). */
const SQLITE: Readonly<Record<number, Violation>> = {
	2067: 'unique', // SQLITE_CONSTRAINT_UNIQUE
	1555: 'unique', // SQLITE_CONSTRAINT_PRIMARYKEY
	787: 'foreign', // SQLITE_CONSTRAINT_FOREIGNKEY
	275: 'check' // SQLITE_CONSTRAINT_CHECK
};

/** Class 23 of https://www.postgresql.org/docs/15/errcodes-appendix.html (M). */
const POSTGRES: Readonly<Record<string, Violation>> = {
	'23505': 'unique',
	'23503': 'foreign',
	'23514': 'check'
};

/** Which constraint a database refused a statement for, or null for any other error. */
export function violation(error: unknown): Violation | null {
	if (!(error instanceof Error)) return null;
	const { code, errcode } = error as Error & { code?: string; errcode?: number };
	if (code === 'ERR_SQLITE_ERROR') return SQLITE[errcode ?? 0] ?? null;
	return POSTGRES[code ?? ''] ?? null;
}
