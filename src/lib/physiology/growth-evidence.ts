import type { Seen, SourceId } from './sources.ts';

interface Study {
	readonly source: SourceId;
	readonly seen: Seen;
	/** New runners who were followed. */
	readonly runners: number;
}

/**
 * What is known about new runners, how fast their running grew, and their injuries: sources
 * nielsen2014 (874 new runners) and buist2008 (532). It stands beside
 * every programme, so that nobody takes our own limit for a proven one. No formula: two results, each
 * of one study, of which neither tells who will be hurt.
 */
export const growthEvidence = {
	/**
	 * Injuries of the kind that distance brings, among those whose distance grew by over 30 % in two
	 * weeks, against under 10 %. No difference for injuries overall; p = 0.07.
	 */
	fastGrowth: {
		source: 'nielsen2014',
		seen: 'seen',
		runners: 874,
		injured: 202,
		overPercentInTwoWeeks: 30,
		hazardRatio: 1.59,
		low: 0.96,
		high: 2.66
	},
	/** A programme that grew by 10 % a week over 13 weeks, against a usual one of 8; p = 0.90. */
	tenPercent: {
		source: 'buist2008',
		seen: 'seen',
		runners: 532,
		injuredPercent: 20.8,
		injuredPercentUsual: 20.3
	}
} as const satisfies Record<string, Study & Readonly<Record<string, string | number>>>;
