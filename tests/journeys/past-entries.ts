import type { Entry } from '../../src/lib/outing/entry.ts';
import type { Phone } from './phone.ts';

/** What an account holds of outings, as its owner may take it away. */
export async function entriesIn(phone: Phone): Promise<readonly Entry[]> {
	const file = (await (await phone.get('/account/export')).json()) as { outingEntries: Entry[] };
	return file.outingEntries;
}
