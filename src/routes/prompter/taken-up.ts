import { keptRun } from '$lib/device/run-clock.ts';
import type { PhoneDatabase } from '$lib/device/phone-database.ts';
import { clockOfEntries } from '$lib/outing/clock-of-entries.ts';
import type { Entry } from '$lib/outing/entry.ts';
import { logOfEntries } from '$lib/outing/log-of-entries.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import { endsAt, positionAt } from '$lib/outing/timeline.ts';
import { PhasePulse } from './phase-pulse.ts';
import { RunningClock } from './running-clock.ts';

export type Started = Extract<Entry, { kind: 'started' }>;

/** What is left of an outing that a reload, a crash or a kill interrupted; null where nothing began. */
export async function takenUp(database: PhoneDatabase, entries: readonly Entry[]) {
	const started = entries.find((entry): entry is Started => entry.kind === 'started');
	if (!started) return null;
	const { outingRunId } = started;
	const kept = await keptRun(database, outingRunId);
	const soFar = kept?.pulse ?? null;
	const from = clockOfEntries(entries, kept?.clock ?? null);
	const clock = new RunningClock(database, outingRunId, from, soFar !== null);
	const position = positionAt(phasesOf(started.outing), logOfEntries(entries), from.elapsedMs);
	const lookedMs = clock.look(endsAt(position, from.elapsedMs));
	return { started, clock, pulse: new PhasePulse(soFar), lookedMs };
}
