import type { OutingClock } from '$lib/outing/outing-clock.ts';
import type { PhoneDatabase, PulseSoFar, RunHere } from './phone-database.ts';

/** Keeps how far an outing is, of one at a time. */
export async function keepClock(
	database: PhoneDatabase,
	outingRunId: string,
	clock: OutingClock
): Promise<void> {
	const step = database.transaction('clock', 'readwrite');
	const before = await step.store.get(outingRunId);
	void step.store.clear();
	void step.store.put({ outingRunId, clock, pulse: before?.pulse ?? null });
	await step.done;
}

/** Keeps what a strap gave so far in the phase that is on, beside the clock; null takes it away. */
export async function keepPulse(
	database: PhoneDatabase,
	outingRunId: string,
	pulse: PulseSoFar | null
): Promise<void> {
	const step = database.transaction('clock', 'readwrite');
	const before = await step.store.get(outingRunId);
	if (before !== undefined) void step.store.put({ ...before, pulse });
	await step.done;
}

/** Null where nothing was kept of it. */
export async function keptRun(
	database: PhoneDatabase,
	outingRunId: string
): Promise<RunHere | null> {
	return (await database.get('clock', outingRunId)) ?? null;
}
