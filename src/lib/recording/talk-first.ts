import type { TalkLevel } from '../physiology/effort-scale.ts';

/** A pulse band in whole beats a minute. A null low edge means "anything under". */
export interface BandBpm {
	readonly low: number | null;
	readonly high: number;
}

/** What to say when a pulse stands beside what was said of talk. */
export type TalkFirst =
	/** Over the care team's own limit: nothing else counts. */
	| 'over-limit'
	/** Both say the same, or one of them is not known. */
	| 'agree'
	/** Talk broke off although the pulse is inside the band, or under it. */
	| 'ease-off'
	/** Talk is comfortable although the pulse is above the band. */
	| 'no-faster'
	/** Talk is where it should be, or further, although the pulse is under the band. */
	| 'nothing-to-chase';

/**
 * Talk comes first when talk and pulse disagree, and the easier of the two is never left for the
 * harder. Own rule: a maximum from age is ten beats or more off for nearly two people in five. A
 * limit from a care team is no estimate, and stands above both.
 *
 * @param talk the last level said, or null before any was
 * @example talkFirst('broke-off', 128, { low: 122, high: 135 }, null) // 'ease-off'
 * @example talkFirst('comfortable', 141, { low: 122, high: 135 }, 140) // 'over-limit'
 */
export function talkFirst(
	talk: TalkLevel | null,
	bpm: number,
	band: BandBpm | null,
	careTeamLimitBpm: number | null
): TalkFirst {
	if (careTeamLimitBpm !== null && bpm > careTeamLimitBpm) return 'over-limit';
	if (talk === null || band === null) return 'agree';
	const isAbove = bpm > band.high;
	const isUnder = band.low !== null && bpm < band.low;
	switch (talk) {
		case 'comfortable':
			return isAbove ? 'no-faster' : isUnder ? 'nothing-to-chase' : 'agree';
		case 'with-breaths':
			return isUnder ? 'nothing-to-chase' : 'agree';
		case 'broke-off':
			return isAbove ? 'agree' : 'ease-off';
	}
}
