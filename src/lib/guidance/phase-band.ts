import type { PhaseKind, PhaseTarget, TalkTarget } from '../outing/phase.ts';
import type { SpeedCapacity } from '../physiology/capacity.ts';
import type { PulseBasis } from './pulse-basis.ts';
import { pulseBand, type PulseBand } from './pulse-band.ts';
import type { SetBy } from './set-target.ts';
import { speedAdvice, type SpeedAdvice } from './speed-advice.ts';

/** One phase as a runner may see it. With pulse off there is no pulse in it, not even an empty one. */
export interface PhaseBand {
	readonly kind: PhaseKind;
	readonly talk: TalkTarget;
	readonly effort: { readonly low: number; readonly high: number };
	readonly byItsEnd: boolean;
	/** Fractions of the reserve; null with pulse off. Known before the resting pulse is. */
	readonly reserve: PhaseTarget['reserve'] | null;
	readonly pulse: PulseBand | null;
	readonly speed: SpeedAdvice;
	readonly set: SetBy;
}

/** Talk and effort always; pulse only where the basis is on; speed as far as capacity is known. */
export function phaseBand(
	target: PhaseTarget,
	set: SetBy,
	basis: PulseBasis,
	capacity: SpeedCapacity | null
): PhaseBand {
	return {
		kind: target.kind,
		talk: target.talk,
		effort: target.effort,
		byItsEnd: target.byItsEnd,
		reserve: basis.kind === 'off' ? null : target.reserve,
		pulse: basis.kind === 'on' ? pulseBand(target, basis) : null,
		speed: speedAdvice(target, capacity, basis),
		set
	};
}
