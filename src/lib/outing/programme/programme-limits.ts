/** What may be wished for. Common practice, no source, where no other is named. */
export const programmeLimits = {
	weeks: { low: 10, high: 20 },
	outingsAWeek: { low: 2, high: 4 },
	/** Under 20 s nobody has found their step. */
	firstRunSeconds: { low: 20, high: 1200 },
	goalMinutes: { low: 5, high: 60 },
	goalKilometres: { low: 1, high: 10 },
	/** At which the kilometres of a goal are reckoned. */
	goalKmh: { low: 5, high: 12 },
	goalRunSeconds: { low: 30, high: 900 }
} as const;

/**
 * How much more running a week may bring than the one before: 14 %, so that two weeks stay under
 * 30 %. Novices whose distance grew by more than 30 % in two weeks had more injuries of the kind that
 * distance brings, though chance was not ruled out (Nielsen 2014, hazard ratio 1.59, 0.96 to 2.66).
 * That a slower growth protects has not been shown (Buist 2008).
 */
export const WEEKLY_GROWTH = 1.14;

/** How much longer a week's longest run may be than that of the week before. Our own caution, no source. */
export const LONGEST_RUN_GROWTH = 1.5;

/**
 * The first week stays under 3 km of running, at up to 9 km/h. For novices with obesity more brought
 * more injuries (Nielsen 2014, Int J Sports Phys Ther 9:338-345); for all others it is our caution.
 */
export const FIRST_WEEK_METRES = 3000;
export const FIRST_WEEK_KMH = 9;

/** The lengths that a programme is made of are whole steps of this. */
export const STEP_SECONDS = 5;
export const SHORTEST_RUN_SECONDS = 15;
/** More runs than this nobody counts along with. */
export const MOST_RUNS = 12;

export const WARM_UP_SECONDS = 420;
export const COOL_DOWN_SECONDS = 360;
export const RECOVERY_SECONDS = { low: 95, high: 240 } as const;

/** Whoever starts at moderate stays under this share of the reserve for the first weeks. */
export const FIRST_WEEKS = { weeks: 8, share: 0.8 } as const;

/** Down to whole steps. What is meant as whole, but for the dust of sums, stays whole. */
export function wholeSteps(seconds: number): number {
	return Math.floor(seconds / STEP_SECONDS + 1e-9) * STEP_SECONDS;
}
