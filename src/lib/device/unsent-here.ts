import { NAME, openPhone } from './phone-database.ts';
import { unsent } from './written-entries.ts';

/** How many entries on this phone were not sent, without leaving anything behind on one that has none. */
export async function unsentHere(): Promise<number> {
	try {
		const all = await indexedDB.databases();
		if (!all.some(({ name }) => name === NAME)) return 0;
		const database = await openPhone();
		const { waiting } = await unsent(database);
		database.close();
		return waiting;
	} catch {
		return 0;
	}
}
