import type { PhaseTarget } from '../outing/phase.ts';
import type { Ceiling } from '../screening/types.ts';

/** Just under vigorous, which begins at 60 % of reserve (Garber 2011), in whole per cent. */
export const MODERATE_CAP_FRACTION = 0.59;
/** The most effort that is still moderate on the 0 to 10 scale (US Physical Activity Guidelines 2018). */
export const MODERATE_CAP_EFFORT = 6;

/**
 * A phase's target cut to what screening allows. It can only become gentler: a target that is
 * already inside comes back unchanged.
 */
export function narrowTarget(target: PhaseTarget, ceiling: Exclude<Ceiling, 'none'>): PhaseTarget {
	if (ceiling === 'vigorous') return target;
	const { reserve, effort } = target;
	return {
		...target,
		reserve: {
			low: reserve.low === null ? null : Math.min(reserve.low, MODERATE_CAP_FRACTION),
			high: Math.min(reserve.high, MODERATE_CAP_FRACTION)
		},
		effort: {
			low: Math.min(effort.low, MODERATE_CAP_EFFORT),
			high: Math.min(effort.high, MODERATE_CAP_EFFORT)
		}
	};
}
