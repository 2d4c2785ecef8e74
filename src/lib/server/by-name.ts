import { LOCALE } from '../words/en/locale.ts';

/** In the order of the alphabet of the app's language, each letter with its accents. */
export function byName<Named extends { readonly name: string }>(named: readonly Named[]): Named[] {
	const order = new Intl.Collator(LOCALE, { numeric: true });
	return [...named].sort((one, other) => order.compare(one.name, other.name));
}
