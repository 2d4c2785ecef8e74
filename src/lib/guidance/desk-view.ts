import type { SettlingIn } from '../outing/settling-in.ts';
import { roundHalfUp } from '../physiology/units.ts';
import { allowedRange, type AllowedRange } from './allowed-range.ts';
import type { Guidance } from './guide.ts';
import type { PhaseBand } from './phase-band.ts';
import type { OpenAccess, PulseBasis } from './pulse-basis.ts';
import { pulseShares, type PulseShares } from './pulse-shares.ts';
import { roughBeats, type RoughBeats } from './rough-beats.ts';

/** One phase of a runner as a coach may see it. */
export interface DeskPhase extends PhaseBand {
	/** For a picture of the band, in hundredths; null where the pulse is off or not known. */
	readonly shares: PulseShares | null;
	/** How far the coach may raise it. */
	readonly allowed: AllowedRange;
	/** Over the range that may be set; null where the pulse is off or not known. */
	readonly roughBeats: readonly RoughBeats[] | null;
}

/** What a coach may see of a runner's bands: no reason, no age, no resting pulse and no maximum. */
export interface DeskView {
	readonly mayRun: boolean;
	readonly settlingIn: SettlingIn;
	readonly pulse: PulseBasis['kind'];
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
		phases: guidance.phases.map((phase) => {
			const allowed = allowedRange(access, settlingIn, phase.kind);
			const isOn = pulse.kind === 'on' && phase.pulse !== null;
			return {
				...phase,
				shares: isOn ? inHundredths(pulseShares(phase.pulse, pulse)) : null,
				allowed,
				roughBeats: isOn ? roughBeats(pulse, allowed.reserve.highest) : null
			};
		})
	};
}

/** Enough for a picture. All their digits would tell the reserve, and with the beats the age. */
function inHundredths({ low, high, lowSpread, highSpread }: PulseShares): PulseShares {
	return {
		low: low === null ? null : roundHalfUp(low, 2),
		high: roundHalfUp(high, 2),
		lowSpread: lowSpread === null ? null : roundHalfUp(lowSpread, 2),
		highSpread: roundHalfUp(highSpread, 2)
	};
}
