import { phaseTargets, runningPhases, walkingPhases, type PhaseKind } from '../outing/phase.ts';
import { settlingIn, type SettlingIn } from '../outing/settling-in.ts';
import type { Access } from '../screening/access.ts';
import { narrowTarget } from './narrow-target.ts';
import { phaseBand, type PhaseBand } from './phase-band.ts';
import type { RunnerProfile } from './profile.ts';
import { pulseBasis, type OpenAccess, type PulseBasis } from './pulse-basis.ts';

/**
 * All that may be shown to a runner. A closed guidance holds no number of any kind, so a page of a
 * referred person has nothing to draw.
 */
export type Guidance =
	| { readonly open: false; readonly code: Extract<Access, { allowed: false }>['code'] }
	| {
			readonly open: true;
			readonly mayRun: boolean;
			readonly settlingIn: SettlingIn;
			readonly pulse: PulseBasis;
			readonly phases: readonly PhaseBand[];
			/** Ids of care notes, such as heat or inhaler. */
			readonly care: readonly string[];
	  };

/**
 * Where screening meets numbers, and the only place where it does.
 *
 * @param daysSinceEachWalk whole days from each walking outing so far to today
 */
export function guide(
	access: Access,
	profile: RunnerProfile,
	daysSinceEachWalk: readonly number[]
): Guidance {
	if (!access.allowed) return { open: false, code: access.code };
	const settling = settlingIn(access.startEffort === 'moderate' && access.run, daysSinceEachWalk);
	const pulse = pulseBasis(access, profile);
	const kinds = phasesFor(access, settling);
	const ceiling =
		settling.kind !== 'going-on' && access.ceiling === 'vigorous' ? 'vigorous' : 'moderate';
	return {
		open: true,
		mayRun: access.run,
		settlingIn: settling,
		pulse,
		phases: kinds.map((kind) =>
			phaseBand(narrowTarget(phaseTargets[kind], ceiling), pulse, profile)
		),
		care: access.advice
	};
}

/** Walk only and settling in have no run: each run is a brisk walk. */
function phasesFor(access: OpenAccess, settling: SettlingIn): readonly PhaseKind[] {
	return access.run && settling.kind !== 'going-on' ? runningPhases : walkingPhases;
}
