import type { ShownOuting } from '$lib/guidance/shown-outing.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';

/** What was done, as parts of an outing, so that it can be drawn as one. */
export function doneParts({ phases }: Pick<ShownOuting, 'phases'>): Pick<Outing, 'parts'> {
	return {
		parts: phases.flatMap(({ kind, activeSeconds }) =>
			activeSeconds ? [plainPhase(kind ?? 'brisk-walk', activeSeconds)] : []
		)
	};
}

/** The runs in it, in seconds, in their order. */
export const runsIn = ({ phases }: Pick<ShownOuting, 'phases'>): readonly number[] =>
	phases.flatMap(({ kind, activeSeconds }) =>
		kind === 'steady-run' && activeSeconds ? [activeSeconds] : []
	);
