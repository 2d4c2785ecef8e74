import { localDate } from '$lib/calendar/local-date.ts';
import { openPhone, phoneIsThere, type PhoneDatabase } from './phone-database.ts';

/** Keeps that this runner said today that they are not well: until tomorrow, and nothing else. */
export async function keepNotWell(
	database: PhoneDatabase,
	runnerKey: string,
	{ nowMs, timeZone }: { readonly nowMs: number; readonly timeZone: string }
): Promise<void> {
	await database.put('notWell', { runnerKey, on: localDate(nowMs, timeZone), timeZone });
}

/** Whether this runner said so today. Forget what was said on other days first. */
export async function isNotWell(database: PhoneDatabase, runnerKey: string): Promise<boolean> {
	return (await database.get('notWell', runnerKey)) !== undefined;
}

/** Deletes what anybody said on another day than today, by the time zone in which it was said. */
export async function forgetNotWell(database: PhoneDatabase, nowMs: number): Promise<void> {
	const step = database.transaction('notWell', 'readwrite');
	for (const { runnerKey, on, timeZone } of await step.store.getAll()) {
		if (on !== localDate(nowMs, timeZone ?? 'UTC')) void step.store.delete(runnerKey);
	}
	await step.done;
}

/** The same from anywhere in the app. A phone that keeps nothing is left so. */
export async function forgetNotWellHere(nowMs: number): Promise<void> {
	try {
		if (!(await phoneIsThere())) return;
		const database = await openPhone();
		await forgetNotWell(database, nowMs).finally(() => database.close());
	} catch {
		// A browser that keeps nothing, or says nothing of it: the prompter looks once more.
	}
}
