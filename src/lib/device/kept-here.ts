import { grantState, type GrantState, type KeptForRunner } from '$lib/outing/kept.ts';
import type { KeptHere, PhoneDatabase } from './phone-database.ts';

/** Keeps what the server allows. Whoever used this phone before keeps no number on it. */
export async function keep(
	database: PhoneDatabase,
	kept: KeptForRunner<unknown>,
	nowMs: number
): Promise<KeptHere> {
	const { runnerKey, emergencyNumber, servedAt } = kept;
	const here: KeptHere = {
		runnerKey,
		kept,
		bySign: false,
		emergencyNumber,
		skewMs: servedAt - nowMs,
		highestSeenMs: servedAt
	};
	const step = database.transaction('kept', 'readwrite');
	void step.store.clear();
	void step.store.put(here);
	await step.done;
	return here;
}

/** Takes the numbers away; whose they were, and the number to call, stay. */
export async function shut(
	database: PhoneDatabase,
	here: KeptHere,
	bySign: boolean
): Promise<KeptHere> {
	const shutNow: KeptHere = { ...here, kept: null, bySign };
	await database.put('kept', shutNow);
	return shutNow;
}

/** What is kept here of whoever used this phone last. */
export async function last(database: PhoneDatabase): Promise<KeptHere | null> {
	return (await database.getAll('kept'))[0] ?? null;
}

/** Whether kept numbers may be shown now; 'closed' where there are none. */
export function stateOf(here: KeptHere | null, nowMs: number): GrantState | 'closed' {
	if (here === null || here.kept === null) return 'closed';
	return grantState(here.kept, here.highestSeenMs, nowMs + here.skewMs);
}

/** Notes how late it is, so that a clock which is set back later is seen. Another page may have shut it. */
export async function noteTime(
	database: PhoneDatabase,
	runnerKey: string,
	nowMs: number
): Promise<KeptHere | null> {
	const step = database.transaction('kept', 'readwrite');
	const here = await step.store.get(runnerKey);
	const later = here && {
		...here,
		highestSeenMs: Math.max(here.highestSeenMs, nowMs + here.skewMs)
	};
	if (later) void step.store.put(later);
	await step.done;
	return later ?? null;
}
