import type { Entry, EntryContent } from './entry.ts';
import { logOfEntries } from './log-of-entries.ts';
import { phasesOf, type Outing, type OutingPhase } from './outing.ts';
import { placeInPlan } from './place-in-plan.ts';
import { phasesDone, positionAt } from './timeline.ts';
import type { PhaseDone } from './walked.ts';

/** What has to be written down, and where the outing's clock was when it happened. */
export type DueEntry = EntryContent & { readonly elapsedMs: number };

/**
 * Phases that are behind and an end that was reached, as far as nobody wrote them down yet: after a
 * locked screen or a crash they are due all at once, each with the time when it happened.
 */
export function dueEntries(
	outing: Outing,
	entries: readonly Entry[],
	nowMs: number
): readonly DueEntry[] {
	const planned = phasesOf(outing);
	const log = logOfEntries(entries);
	const done = phasesDone(planned, log, nowMs);
	const written = new Set(entries.flatMap((it) => (it.kind === 'phase-done' ? it.phase : [])));
	const phases = done
		.map((one) => phaseEntry(one, planned))
		.filter(({ phase }) => !written.has(phase));
	const isOver = positionAt(planned, log, nowMs).state === 'over';
	if (!isOver || entries.some(({ kind }) => kind === 'ended')) return phases;
	const how = log.some(({ kind }) => kind === 'cooling-down') ? 'early' : 'finished';
	return [...phases, { kind: 'ended', how, elapsedMs: done.at(-1)?.endedAtMs ?? nowMs }];
}

function phaseEntry(
	{ phase, index, activeMs, endedAtMs, how }: PhaseDone,
	planned: readonly OutingPhase[]
) {
	return {
		kind: 'phase-done' as const,
		phase: placeInPlan(planned, phase, index),
		activeSeconds: activeMs / 1000,
		how,
		elapsedMs: endedAtMs
	};
}
