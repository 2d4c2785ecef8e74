import type { Guidance } from '$lib/guidance/guide.ts';
import type { PhaseBand } from '$lib/guidance/phase-band.ts';
import type { PulseBasis } from '$lib/guidance/pulse-basis.ts';
import { pulseBandIfMaximumIs } from '$lib/guidance/pulse-band.ts';
import type { PulseBand } from '$lib/guidance/pulse-band.ts';
import { phaseTargets, type PhaseKind, type TalkTarget } from '$lib/outing/phase.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import { percent, wholePercent } from '$words/numbers.ts';
import type { SetView } from './set-view.ts';
import { speedView, type SpeedView, type Units } from './speed-view.ts';

export type { SetView, SpeedView, Units };

type OpenGuidance = Extract<Guidance, { open: true }>;

/** A pulse band as it is shown: rounded once, here, half up. */
export interface PulseBandView {
	readonly lowBpm: number | null;
	readonly highBpm: number;
	readonly lowSpreadBpm: number | null;
	readonly highSpreadBpm: number;
	readonly lowCount: number | null;
	readonly highCount: number;
	readonly lowShare: string | null;
	readonly highShare: string;
	readonly cutByCareTeam: boolean;
}

export interface PhaseView {
	readonly kind: PhaseKind;
	readonly talk: TalkTarget;
	readonly effort: { readonly low: number; readonly high: number };
	readonly byItsEnd: boolean;
	readonly pulse: PulseBandView | null;
	readonly speed: SpeedView;
	/** Null where the band is the usual one. */
	readonly set: SetView | null;
}

/** What the page knows of the pulse. With pulse off there is nothing but a care team's own limit. */
export type PulseView =
	| { readonly kind: 'off'; readonly careTeamLimit: number | null }
	| {
			readonly kind: 'not-yet';
			readonly why: 'not-known' | 'measure-again';
			readonly careTeamLimit: number | null;
	  }
	| {
			readonly kind: 'on';
			readonly careTeamLimit: number | null;
			readonly restingBpm: number;
			readonly mornings: number;
			readonly maximumBpm: number;
			readonly basis: 'age' | 'supervised-test' | 'age-and-highest-seen';
	  };

/** The main phase's band with the maximum ten beats lower, as it is, and ten beats higher. */
export interface IfMaximumOff {
	readonly kind: PhaseKind;
	readonly rows: readonly { readonly maximumBpm: number; readonly band: PulseBandView }[];
}

export const whole = (value: number) => roundHalfUp(value, 0);

export function pulseView(basis: PulseBasis): PulseView {
	switch (basis.kind) {
		case 'off':
			return { kind: 'off', careTeamLimit: basis.careTeamLimitBpm };
		case 'not-yet':
			return { kind: 'not-yet', why: basis.why, careTeamLimit: basis.careTeamLimitBpm };
		case 'on':
			return {
				kind: 'on',
				careTeamLimit: basis.careTeamLimitBpm,
				restingBpm: whole(basis.resting.bpm),
				mornings: basis.resting.mornings,
				maximumBpm: whole(basis.maximum.bpm),
				basis: basis.maximum.basis
			};
	}
}

export function phaseView(phase: PhaseBand, set: SetView | null, units: Units): PhaseView {
	return {
		kind: phase.kind,
		talk: phase.talk,
		effort: phase.effort,
		byItsEnd: phase.byItsEnd,
		pulse: phase.pulse === null ? null : bandView(phase.pulse),
		speed: speedView(phase.speed, units),
		set
	};
}

export function ifMaximumOff({ pulse, phases }: OpenGuidance): IfMaximumOff | null {
	const main = phases.find(({ kind }) => kind === 'steady-run' || kind === 'brisk-walk');
	if (pulse.kind !== 'on' || !main?.reserve) return null;
	const target = { ...phaseTargets[main.kind], reserve: main.reserve };
	return {
		kind: main.kind,
		rows: [-10, 0, 10].map((off) => ({
			maximumBpm: whole(pulse.maximum.bpm + off),
			band: bandView(pulseBandIfMaximumIs(off, target, pulse))
		}))
	};
}

export function bandView({ low, high, cutByCareTeam }: PulseBand): PulseBandView {
	return {
		lowBpm: low === null ? null : whole(low.bpm),
		highBpm: whole(high.bpm),
		lowSpreadBpm: low === null ? null : whole(low.spreadBpm),
		highSpreadBpm: whole(high.spreadBpm),
		lowCount: low === null ? null : whole(low.count15),
		// A limit is never counted up: one beat more in 15 seconds would be over it.
		highCount: cutByCareTeam ? Math.floor(high.count15) : whole(high.count15),
		lowShare: low === null ? null : wholePercent(low.fraction),
		highShare: percent(high.fraction),
		cutByCareTeam
	};
}
