import { runningPhases, walkingPhases, type PhaseKind } from '../outing/phase.ts';
import { settlingIn, type SettlingIn } from '../outing/settling-in.ts';
import type { Access } from '../screening/access.ts';
import { phaseBand, type PhaseBand } from './phase-band.ts';
import type { RunnerProfile } from './profile.ts';
import { pulseBasis, type OpenAccess, type PulseBasis } from './pulse-basis.ts';
import { speedCapacityOf } from './runner-capacity.ts';
import { setTarget } from './set-target.ts';
import type { SetBand } from './settings-in-force.ts';

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
			/** Of kinds that an outing may have beside the usual ones. */
			readonly others: readonly PhaseBand[];
			/** Ids of care notes, such as heat or inhaler. */
			readonly care: readonly string[];
	  };

/**
 * Where screening meets numbers, and the only place where it does.
 *
 * @param daysSinceEachWalk whole days from each walking outing so far to today
 * @param set what the coaches of the runner's groups set, in any order
 */
export function guide(
	access: Access,
	profile: RunnerProfile,
	daysSinceEachWalk: readonly number[],
	set: readonly SetBand[] = []
): Guidance {
	if (!access.allowed) return { open: false, code: access.code };
	const settling = settlingIn(access.startEffort === 'moderate' && access.run, daysSinceEachWalk);
	const pulse = pulseBasis(access, profile);
	const capacity = speedCapacityOf(access, profile, pulse);
	const kinds = phasesFor(access, settling);
	const bandOf = (kind: PhaseKind) => {
		const decided = setTarget(kind, set, access, settling);
		return phaseBand(decided.target, decided.set, pulse, capacity);
	};
	return {
		open: true,
		mayRun: access.run,
		settlingIn: settling,
		pulse,
		phases: kinds.map(bandOf),
		// Whoever may run may walk briskly as well; whoever may not walks only.
		others: walkingPhases.filter((kind) => !kinds.includes(kind)).map(bandOf),
		care: access.advice
	};
}

/** Walk only and settling in have no run: each run is a brisk walk. */
function phasesFor(access: OpenAccess, settling: SettlingIn): readonly PhaseKind[] {
	return access.run && settling.kind !== 'going-on' ? runningPhases : walkingPhases;
}
