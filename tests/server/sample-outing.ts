import type { Outing, OutingPhase } from '$lib/outing/outing.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import { unknownPulse, type ProgrammeWishes } from '$lib/outing/programme/wishes.ts';

export const phase = (
	kind: PhaseKind,
	seconds: number,
	changes: Partial<OutingPhase> = {}
): OutingPhase => ({
	kind,
	seconds,
	target: null,
	speedKmh: null,
	inclinePercent: null,
	cue: '',
	...changes
});

/** Invented: runs that rise and fall, one of them with everything that a coach may write to it. */
export const unevenRuns: Outing = {
	name: 'Outing 7: 50 s',
	parts: [
		phase('warm-up-walk', 420),
		{ times: 2, phases: [phase('steady-run', 40), phase('recovery-walk', 110)] },
		phase('steady-run', 50, {
			target: { low: 0.5, high: 0.6 },
			speedKmh: 6.4,
			inclinePercent: 0.5,
			cue: 'Long back, short steps'
		}),
		phase('recovery-walk', 110),
		phase('cool-down-walk', 360)
	]
};

/** What a programme may be made from. */
export const plainWishes: ProgrammeWishes = {
	weeks: 12,
	outingsAWeek: 2,
	firstRunSeconds: 50,
	goal: { kind: 'minutes', minutes: 20 },
	settlingIn: false,
	pulse: unknownPulse
};
