import type { OutingClock } from '$lib/outing/outing-clock.ts';
import type { PhoneDatabase } from './phone-database.ts';

/** Keeps how far an outing is, of one at a time. */
export async function keepClock(
	database: PhoneDatabase,
	outingRunId: string,
	clock: OutingClock
): Promise<void> {
	const step = database.transaction('clock', 'readwrite');
	void step.store.clear();
	void step.store.put({ outingRunId, clock });
	await step.done;
}

export async function keptClock(
	database: PhoneDatabase,
	outingRunId: string
): Promise<OutingClock | null> {
	return (await database.get('clock', outingRunId))?.clock ?? null;
}
