import type { PhaseTarget } from '../outing/phase.ts';
import type { SettlingIn } from '../outing/settling-in.ts';
import { isEffort } from '../physiology/effort-scale.ts';
import { allowedRange, type AllowedRange, type End } from './allowed-range.ts';
import type { OpenAccess } from './pulse-basis.ts';

/** What a coach sets for a phase. */
export interface BandSetting {
	/** Fractions of heart-rate reserve. A null low edge means "anything under". */
	readonly lowFraction: number | null;
	readonly highFraction: number;
	/** Whole steps of the effort scale, 0 to 10. */
	readonly effortLow: number;
	readonly effortHigh: number;
}

/** Where a setting went beyond what is open to this runner, and what stopped it. */
export interface Cut {
	readonly where: 'reserve' | 'effort';
	readonly because: End['because'];
	readonly wanted: number;
	readonly highest: number;
}

/** Below a fifth of reserve there is hardly any effort to hold. Our own choice, no source. */
export const LOWEST_FRACTION = 0.2;
/** A band of fewer beats than about five cannot be held. Our own choice, no source. */
export const NARROWEST_FRACTION = 0.05;
export const LOWEST_EFFORT = 1;
/** Characters of the notes that may go with a setting. */
export const NOTE_LENGTHS = { runner: 300, inner: 500 } as const;

/** Whether the numbers make a band at all; what a runner may have of it is decided later. */
export function isBandSetting(setting: BandSetting): boolean {
	const { lowFraction, highFraction, effortLow, effortHigh } = setting;
	const floor = lowFraction ?? LOWEST_FRACTION;
	return (
		floor >= LOWEST_FRACTION &&
		hundredths(highFraction) >= hundredths(floor + NARROWEST_FRACTION) &&
		highFraction <= 1 &&
		isEffort(effortLow) &&
		isEffort(effortHigh) &&
		effortLow >= LOWEST_EFFORT &&
		effortLow <= effortHigh
	);
}

export interface Applied {
	readonly target: PhaseTarget;
	readonly cuts: readonly Cut[];
}

/**
 * A phase's target as the coach set it, cut to what is open to this runner now.
 * @throws RangeError when the numbers make no band
 */
export function applySetting(
	target: PhaseTarget,
	setting: BandSetting,
	access: OpenAccess,
	settling: SettlingIn
): Applied {
	return cutTo(allowedRange(access, settling, target.kind), target, setting);
}

/**
 * Only upper edges are cut; a low edge above the cut comes down with it, so that the band is never
 * wider than what was set, and never harder.
 * @throws RangeError when the numbers make no band
 */
export function cutTo(
	{ reserve, effort }: AllowedRange,
	target: PhaseTarget,
	setting: BandSetting
): Applied {
	if (!isBandSetting(setting)) throw new RangeError('cutTo requires a band');
	const high = Math.min(setting.highFraction, reserve.highest);
	const effortHigh = Math.min(setting.effortHigh, effort.highest);
	return {
		target: {
			...target,
			reserve: { low: lowEdge(setting.lowFraction, high), high },
			effort: { low: Math.min(setting.effortLow, effortHigh), high: effortHigh }
		},
		cuts: [
			...cutOf('reserve', setting.highFraction, reserve),
			...cutOf('effort', setting.effortHigh, effort)
		]
	};
}

function lowEdge(wanted: number | null, high: number): number | null {
	return wanted === null ? null : Math.min(wanted, hundredths(high - NARROWEST_FRACTION));
}

function cutOf(where: Cut['where'], wanted: number, { highest, because }: End): readonly Cut[] {
	return wanted > highest ? [{ where, because, wanted, highest }] : [];
}

/** Settings are whole per cent; this takes the dust off sums of them. */
function hundredths(fraction: number): number {
	return Math.round(fraction * 100) / 100;
}
