import type { Outing } from '../outing/outing.ts';
import { outingTotals } from '../outing/totals.ts';
import type { RosterState } from './roster-next.ts';

/** Why somebody may not be put at a later step for now. */
export type StepRefusal =
	/** They walk for now, whatever the outing says; runs come after. */
	| 'settling-in'
	/** Its longest run is longer than theirs may be in the weeks after settling in. */
	| 'runs-too-long'
	/** Their result is not open. */
	| 'closed';

/**
 * Whether a coach may put a runner at another step of a programme; null where they may. No longer run
 * than they have now is always allowed, and whoever may walk has no run at any step.
 *
 * @param from the outing of their step now
 * @param to that of the step which is wished for
 */
export function stepRefusal(state: RosterState, from: Outing, to: Outing): StepRefusal | null {
	const longest = outingTotals(to).longestRunSeconds;
	if (longest <= outingTotals(from).longestRunSeconds) return null;
	if (!state.open) return 'closed';
	if (state.word === 'may-walk') return null;
	if (state.settlingInUntil !== null) return 'settling-in';
	const { longestRunSeconds } = state;
	return longestRunSeconds !== null && longest > longestRunSeconds ? 'runs-too-long' : null;
}
