import type { MeasuredPulse } from '$lib/outing/entry.ts';
import type { TalkLevel } from '$lib/physiology/effort-scale.ts';
import type { Straps } from '$lib/recording/strap.ts';
import type { BandBpm } from '$lib/recording/talk-first.ts';

/** What the live pulse is told, and tells. */
export interface MeterProps {
	/** Of the phase that is on; null where there is none to show. */
	readonly bandBpm: BandBpm | null;
	/**
	 * The pulse that counts now: every second while a strap is read, once after taps or a count, and
	 * null as soon as there is none. Not rounded.
	 */
	readonly onpulse: (measured: MeasuredPulse | null) => void;
	readonly straps: Straps;
	/** The last talk level said, for when the two disagree. */
	readonly talk?: TalkLevel | null;
	readonly careTeamLimitBpm?: number | null;
	/** True where there is room for one look: what works is not explained. */
	readonly compact?: boolean;
	/**
	 * True until a pulse was guessed: then what a strap measures is not shown. Over a limit from a care
	 * team it is said all the same.
	 */
	readonly isHidden?: boolean;
	/** Where the swell begins and ends; without it no swell is drawn. */
	readonly ends?: { readonly restingBpm: number; readonly maximumBpm: number } | null;
}
