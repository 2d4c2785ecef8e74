import type { BandSetting } from '$lib/guidance/band-setting.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import type { PercentBand } from './band-form.ts';

/** A setting in the numbers that a coach reads. */
export interface SettingView {
	/** Null with pulse off. */
	readonly percent: PercentBand | null;
	readonly effort: { readonly low: number; readonly high: number };
}

/** One line of what was set. */
export interface EntryView {
	readonly id: string;
	readonly on: LocalDate;
	readonly phase: PhaseKind;
	/** Null where it was taken back. */
	readonly setting: SettingView | null;
	readonly who: string;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
}

/** What one tap brings back: a setting of a day, or with null the band as if none had been set. */
export interface BackView {
	readonly to: { readonly setting: SettingView; readonly on: LocalDate } | null;
}

interface Entry {
	readonly id: string;
	readonly phase: PhaseKind;
	readonly setting: BandSetting | null;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
	readonly setByName: string;
	readonly setAt: number;
}

export function entryView(entry: Entry, timeZone: string, hasReserve: boolean): EntryView {
	const { id, phase, setting, runnerNote, innerNote, setByName, setAt } = entry;
	return {
		id,
		on: localDate(setAt, timeZone),
		phase,
		setting: setting && settingView(setting, hasReserve),
		who: setByName,
		runnerNote,
		innerNote
	};
}

/** @param entries newest first. Null where nothing was ever set for the phase. */
export function backView(
	entries: readonly Entry[],
	phase: PhaseKind,
	timeZone: string,
	hasReserve: boolean
): BackView | null {
	const [newest, before] = entries.filter((entry) => entry.phase === phase);
	if (newest === undefined) return null;
	if (!before?.setting) return newest.setting === null ? null : { to: null };
	const on = localDate(before.setAt, timeZone);
	return { to: { setting: settingView(before.setting, hasReserve), on } };
}

function settingView(setting: BandSetting, hasReserve: boolean): SettingView {
	const { lowFraction, highFraction, effortLow, effortHigh } = setting;
	return {
		percent: hasReserve
			? { low: lowFraction === null ? null : whole(lowFraction), high: whole(highFraction) }
			: null,
		effort: { low: effortLow, high: effortHigh }
	};
}

const whole = (fraction: number) => Math.round(fraction * 100);
