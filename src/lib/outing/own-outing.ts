import type { Outing } from './outing.ts';
import { plainOuting, type PlannedPhase } from './plain-outing.ts';
import { plainPhase } from './plain-phase.ts';

/** Whoever starts at moderate effort begins with runs of 20 to 30 s. Our own rule. */
const FIRST_RUN_SECONDS = 25;

/** For whoever walks: one brisk walk, long enough for the pulse to catch up. Our own choice. */
const WALKS: readonly PlannedPhase[] = [
	{ kind: 'warm-up-walk', seconds: 420 },
	{ kind: 'brisk-walk', seconds: 900 },
	{ kind: 'cool-down-walk', seconds: 420 }
];

/**
 * The outing of a runner who has no other: the plain one, with shorter runs for whoever starts at
 * moderate effort, and without a run for whoever walks.
 *
 * @example ownOuting('Walk', 'walks').parts.length // 3
 */
export function ownOuting(name: string, kind: 'walks' | 'first-runs' | 'runs'): Outing {
	const phases = kind === 'walks' ? WALKS : plainOuting;
	const parts = phases.map((phase) =>
		plainPhase(
			phase.kind,
			kind === 'first-runs' && phase.kind === 'steady-run' ? FIRST_RUN_SECONDS : phase.seconds
		)
	);
	return { name, parts };
}
