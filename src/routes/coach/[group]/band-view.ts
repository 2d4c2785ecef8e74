import type { DeskPhase } from '$lib/guidance/desk-view.ts';
import type { PulseShares } from '$lib/guidance/pulse-shares.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import { speedView, type SpeedView, type Units } from '../../bands/speed-view.ts';

/** Beats a minute as a coach sees them, rounded once, here. */
export interface BeatsView {
	readonly low: number | null;
	readonly high: number;
	readonly spread: number;
	readonly isCareLimit: boolean;
}

/** Who set a band, as far as this group's coaches may know. */
export interface SetByView {
	readonly by: 'default' | 'coach' | 'group';
	readonly on: LocalDate | null;
	/** True where screening allows less than was set. */
	readonly isCut: boolean;
	/** True where another group's gentler band counts. Which group is not theirs to know. */
	readonly isElsewhere: boolean;
}

export interface BandView {
	readonly kind: PhaseKind;
	readonly byItsEnd: boolean;
	readonly beats: BeatsView | null;
	readonly shares: PulseShares | null;
	/** Whole per cent of the reserve; null with pulse off. */
	readonly percent: { readonly low: number | null; readonly high: number } | null;
	readonly effort: { readonly low: number; readonly high: number };
	readonly speed: SpeedView;
	readonly set: SetByView;
}

export function bandView(
	phase: DeskPhase,
	groupId: string,
	units: Units,
	timeZone: string
): BandView {
	const { kind, byItsEnd, pulse, shares, reserve, effort, set } = phase;
	const spreads = pulse && [pulse.low?.spreadBpm ?? 0, pulse.high.spreadBpm];
	return {
		kind,
		byItsEnd,
		beats: pulse && {
			low: pulse.low && whole(pulse.low.bpm),
			high: whole(pulse.high.bpm),
			spread: whole(Math.max(...(spreads ?? []))),
			isCareLimit: pulse.cutByCareTeam
		},
		shares,
		percent: reserve && {
			low: reserve.low === null ? null : whole(reserve.low * 100),
			high: whole(reserve.high * 100)
		},
		effort,
		speed: speedView(phase.speed, units),
		set:
			set.by === 'default'
				? { by: 'default', on: null, isCut: false, isElsewhere: false }
				: {
						by: set.by,
						on: localDate(set.since, timeZone),
						isCut: set.cuts.some(({ because }) => because === 'screening'),
						isElsewhere: set.groupIds.some((id) => id !== groupId)
					}
	};
}

const whole = (value: number) => roundHalfUp(value, 0);
