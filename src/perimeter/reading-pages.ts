/**
 * Pages that are only read: they say nothing of a person that must not come back after it has
 * ended, and load no script at all. Every other page asks again when a browser brings it back from
 * memory.
 */
export const readingPages: ReadonlySet<string> = new Set([
	'/',
	'/help',
	'/methods',
	'/methods/checks',
	'/methods/formulas',
	'/offline',
	'/privacy',
	'/safety'
]);
