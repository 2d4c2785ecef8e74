import { plainPhase } from './plain-phase.ts';
import { isRepeated, type Outing, type OutingPart, type OutingPhase } from './outing.ts';

/**
 * The same outing for somebody who may walk, or is settling in: each run is a brisk walk of the same
 * length, so that everybody begins and ends together. Target, speed, incline and cue of a run were
 * meant for running and go with it; walks stay as they are.
 *
 * @example walkingOuting({ name: 'One', parts: [] }).name // 'One'
 */
export function walkingOuting(outing: Outing): Outing {
	return { ...outing, parts: outing.parts.map(walkingPart) };
}

function walkingPart(part: OutingPart): OutingPart {
	return isRepeated(part) ? { ...part, phases: part.phases.map(walkingPhase) } : walkingPhase(part);
}

function walkingPhase(phase: OutingPhase): OutingPhase {
	if (phase.kind !== 'steady-run') return phase;
	return plainPhase('brisk-walk', phase.seconds);
}
