import type { PhoneDatabase } from './phone-database.ts';

/** Keeps that this runner said today that they are not well: until tomorrow, and nothing else. */
export async function keepNotWell(
	database: PhoneDatabase,
	runnerKey: string,
	today: string
): Promise<void> {
	await database.put('notWell', { runnerKey, on: today });
}

/** Whether this runner said so today. What anybody said on another day is deleted. */
export async function isNotWell(
	database: PhoneDatabase,
	runnerKey: string,
	today: string
): Promise<boolean> {
	const all = await database.getAll('notWell');
	for (const one of all) {
		if (one.on !== today) await database.delete('notWell', one.runnerKey);
	}
	return all.some((one) => one.runnerKey === runnerKey && one.on === today);
}
