import type { Outing } from '$lib/outing/outing.ts';

/** One week of a programme as a page shows it. */
export interface WeekRow {
	readonly number: number;
	readonly isSettlingIn: boolean;
	readonly runningSeconds: number;
	readonly longestRunSeconds: number;
	readonly growth: number | null;
	/** Medians of so many of the group, in shares of the reserve; null without any. */
	readonly runners: number;
	readonly meanShare: number | null;
	readonly peakShare: number | null;
	/** The last outing of the week, which has its longest run. */
	readonly last: Pick<Outing, 'parts'> | null;
}

export interface WeekRows {
	readonly rows: readonly WeekRow[];
	/** How many runners have a curve, in those weeks that ask for no more than can be reckoned with. */
	readonly runners: number;
	/** False where a week has an estimate of some of them only: then each week says of how many. */
	readonly isOfAll: boolean;
}
