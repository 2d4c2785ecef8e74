import type { AllowedRange } from '$lib/guidance/allowed-range.ts';
import {
	LOWEST_FRACTION,
	NARROWEST_FRACTION,
	type BandSetting
} from '$lib/guidance/band-setting.ts';
import { roughBeatsAt, type RoughBeats } from '$lib/guidance/rough-beats.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';

/** The fields of a form that sets a band. */
export type BandField =
	'lowPercent' | 'highPercent' | 'effortLow' | 'effortHigh' | 'runnerNote' | 'innerNote';

/** A form that sets the band of one phase. */
export interface BandFormView {
	readonly phase: PhaseKind;
	/** What stands in the fields. */
	readonly values: Readonly<Record<BandField, string>>;
	/** False where pulse is off: effort alone is set. */
	readonly hasReserve: boolean;
	/** The band that counts, as the page tells it; null where there are no beats. */
	readonly inForce: { readonly percent: PercentBand; readonly beats: PercentBand } | null;
	/** About how many beats a share of the reserve is; null where it is not known. */
	readonly roughBeats: readonly RoughBeats[] | null;
	readonly ends: AllowedRange;
}

/** A band in whole per cent of the reserve. */
export interface PercentBand {
	readonly low: number | null;
	readonly high: number;
}

const LOWEST = Math.round(LOWEST_FRACTION * 100);
const NARROWEST = Math.round(NARROWEST_FRACTION * 100);

/** The form with what a band is now, and the notes that go with it. */
export function formValues(
	{ lowFraction, highFraction, effortLow, effortHigh }: BandSetting,
	notes: { readonly runnerNote: string | null; readonly innerNote: string | null } | undefined
): BandFormView['values'] {
	return {
		lowPercent: lowFraction === null ? '' : percent(lowFraction),
		highPercent: percent(highFraction),
		effortLow: String(effortLow),
		effortHigh: String(effortHigh),
		runnerNote: notes?.runnerNote ?? '',
		innerNote: notes?.innerNote ?? ''
	};
}

/** The band that is typed so far, or null while it is none. */
export function typedBand(low: string, high: string): PercentBand | null {
	const [from, to] = [typed(low), typed(high)];
	if (to === null || to > 100 || (low.trim() !== '' && from === null)) return null;
	return to - (from ?? LOWEST) >= NARROWEST ? { low: from, high: to } : null;
}

/** A band in about as many beats, or null where that is not known. */
function beatsAbout(
	points: readonly RoughBeats[] | null,
	{ low, high }: PercentBand
): PercentBand | null {
	const from = points && low !== null ? roughBeatsAt(points, low) : null;
	const to = points && roughBeatsAt(points, high);
	if (to === null || (low !== null && from === null)) return null;
	return { low: from, high: to };
}

/**
 * The beats beside a band that is in the form: those of the band that counts as they stand elsewhere,
 * and of one that is only being tried about as many. Null where none can be told.
 */
export function beatsOf(
	{ inForce, roughBeats }: Pick<BandFormView, 'inForce' | 'roughBeats'>,
	band: PercentBand
): { readonly beats: PercentBand; readonly isRough: boolean } | null {
	const isSame = inForce?.percent.low === band.low && inForce.percent.high === band.high;
	if (isSame) return { beats: inForce.beats, isRough: false };
	const beats = beatsAbout(roughBeats, band);
	return beats && { beats, isRough: true };
}

/** Where a dragged edge comes to rest: short of the other one, and where the part ends. */
export function dragged(
	edge: 'low' | 'high',
	percent: number,
	{ low, high }: PercentBand,
	highest: number
): number {
	return edge === 'low'
		? Math.max(LOWEST, Math.min(percent, high - NARROWEST))
		: Math.min(highest, Math.max(percent, (low ?? LOWEST) + NARROWEST));
}

function typed(text: string): number | null {
	return /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : null;
}

const percent = (fraction: number) => String(Math.round(fraction * 100));
