/**
 * What an outing may hold, with the reason. Common practice, no source, where no other is named;
 * each is wide, and made to catch slips of the hand rather than to judge a plan.
 */
export const outingLimits = {
	/** Under 5 s no cue can be said before the next; over 2 h is no phase of a beginner's outing. */
	phaseSeconds: { low: 5, high: 7200 },
	/** Written out. Beyond it a list of phases can no longer be overlooked. */
	phases: { low: 1, high: 120 },
	outingSeconds: { low: 60, high: 14_400 },
	times: { low: 2, high: 40 },
	/** Treadmills for walking and running; the equations end inside it. */
	speedKmh: { low: 1, high: 20 },
	inclinePercent: { low: 0, high: 15 },
	nameLength: { low: 1, high: 80 },
	cueLength: { low: 0, high: 120 }
} as const;
