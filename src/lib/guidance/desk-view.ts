import type { SettlingIn } from '../outing/settling-in.ts';
import { targetAtFraction } from '../physiology/reserve.ts';
import { roundHalfUp } from '../physiology/units.ts';
import { allowedRange, type AllowedRange } from './allowed-range.ts';
import type { Guidance } from './guide.ts';
import type { PhaseBand } from './phase-band.ts';
import type { OpenAccess, PulseBasis } from './pulse-basis.ts';
import { pulseShares, type PulseShares } from './pulse-shares.ts';

/** One phase of a runner as a coach may see it. */
export interface DeskPhase extends PhaseBand {
	/** For a picture of the band; null where the pulse is off or not known. */
	readonly shares: PulseShares | null;
	/** How far the coach may raise it. */
	readonly allowed: AllowedRange;
}

/** What a coach may see of a runner's bands: no reason, no age, no resting pulse and no maximum. */
export interface DeskView {
	readonly mayRun: boolean;
	readonly settlingIn: SettlingIn;
	readonly pulse: PulseBasis['kind'];
	/**
	 * Beats a minute, rounded, at each whole per cent of the reserve from 0 to 100; null where the
	 * pulse is off or not known. A limit of the care team holds here too.
	 */
	readonly bpmByPercent: readonly number[] | null;
	readonly phases: readonly DeskPhase[];
}

type OpenGuidance = Extract<Guidance, { open: true }>;

/** What stays of a runner's guidance when a coach looks at it. */
export function deskView(access: OpenAccess, guidance: OpenGuidance): DeskView {
	const { mayRun, settlingIn, pulse } = guidance;
	return {
		mayRun,
		settlingIn,
		pulse: pulse.kind,
		bpmByPercent: pulse.kind === 'on' ? beats(pulse) : null,
		phases: guidance.phases.map((phase) => ({
			...phase,
			shares: pulse.kind === 'on' && phase.pulse !== null ? pulseShares(phase.pulse, pulse) : null,
			allowed: allowedRange(access, settlingIn, phase.kind)
		}))
	};
}

function beats({ resting, maximum, careTeamLimitBpm }: Extract<PulseBasis, { kind: 'on' }>) {
	return Array.from({ length: 101 }, (_, percent) => {
		const { bpm } = targetAtFraction(percent / 100, resting, maximum);
		return roundHalfUp(Math.min(bpm, careTeamLimitBpm ?? Infinity), 0);
	});
}
