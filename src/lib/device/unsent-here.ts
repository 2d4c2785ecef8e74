import { openPhone } from './phone-database.ts';
import { unsent, writeJotted } from './written-entries.ts';

/** How many entries on this phone were not sent; none where they cannot be read. */
export async function unsentHere(): Promise<number> {
	try {
		const database = await openPhone();
		await writeJotted(database);
		const { waiting } = await unsent(database);
		database.close();
		return waiting;
	} catch {
		return 0;
	}
}
