import { LOCALE } from './locale.ts';

/** "Ines, Rashid and Gwen". */
export const and = (names: readonly string[]): string =>
	new Intl.ListFormat(LOCALE, { type: 'conjunction' }).format(names);

/** "a doctor, a nurse or a pharmacist". */
export const or = (names: readonly string[]): string =>
	new Intl.ListFormat(LOCALE, { type: 'disjunction' }).format(names);
