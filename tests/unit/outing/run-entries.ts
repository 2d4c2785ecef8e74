import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { RUN } from './any-entry.ts';

/** 420 s to warm up, 50 s of running, 110 s of walking, 40 s of running, 360 s to cool down. */
export const outing: Outing = {
	name: 'Outing 7',
	parts: [
		plainPhase('warm-up-walk', 420),
		plainPhase('steady-run', 50),
		plainPhase('recovery-walk', 110),
		plainPhase('steady-run', 40),
		plainPhase('cool-down-walk', 360)
	]
};

export const BEGAN = 1_700_000_000_000;

/** What was done at which second of the outing's clock, as entries of one run. */
export function entriesOf(
	...done: readonly (readonly [seconds: number, content: EntryContent])[]
): readonly Entry[] {
	const started = {
		kind: 'started',
		outing,
		plannedId: null,
		place: 'outdoors',
		hot: false
	} as const;
	return [[0, started] as const, ...done].map(([seconds, content], seq) => ({
		...content,
		id: `00000000-0000-4000-8000-${String(seq).padStart(12, '0')}`,
		outingRunId: RUN,
		at: BEGAN + seconds * 1000,
		seq,
		elapsedMs: seconds * 1000
	}));
}
