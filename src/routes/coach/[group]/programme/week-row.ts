import type { Outing } from '$lib/outing/outing.ts';

/** One week of a programme as a page shows it. */
export interface WeekRow {
	readonly number: number;
	readonly isSettlingIn: boolean;
	readonly runningSeconds: number;
	readonly longestRunSeconds: number;
	readonly growth: number | null;
	/** Medians of the group, in shares of the reserve; null without any. */
	readonly meanShare: number | null;
	readonly peakShare: number | null;
	/** The last outing of the week, which has its longest run. */
	readonly last: Pick<Outing, 'parts'> | null;
}

export interface WeekRows {
	readonly rows: readonly WeekRow[];
	/** Of how many runners the expected pulse is. */
	readonly runners: number;
}
