import type { OutingPhase } from '$lib/outing/outing.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';

export const phase = (kind: PhaseKind, seconds: number): OutingPhase => ({
	kind,
	seconds,
	target: null,
	speedKmh: null,
	inclinePercent: null,
	cue: ''
});

/** Invented: 400 s to warm up, runs of 50 and 70 s with a walk after each, 380 s to cool down. */
export const twoRuns: readonly OutingPhase[] = [
	phase('warm-up-walk', 400),
	phase('steady-run', 50),
	phase('recovery-walk', 110),
	phase('steady-run', 70),
	phase('recovery-walk', 110),
	phase('cool-down-walk', 380)
];

export const twoRunsMs = 1_120_000;
