/** Would be run as a formula by a spreadsheet (OWASP, CSV Injection; M). */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Rows as comma-separated values: RFC 4180, so every line ends with CR LF and a quote is doubled. A
 * cell that a spreadsheet would run gets an apostrophe before it. The byte order mark is what lets
 * spreadsheets read other scripts than Latin.
 */
export function csv(rows: readonly (readonly string[])[]): string {
	return `\uFEFF${rows.map((row) => `${row.map(cellOf).join(',')}\r\n`).join('')}`;
}

function cellOf(text: string): string {
	const safe = FORMULA.test(text) ? `'${text}` : text;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
