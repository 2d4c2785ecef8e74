import type { OutingPhase } from './outing.ts';

/**
 * The place in the plan of a phase that was done, by which entries name it. A cool-down that was gone
 * to early keeps its place in the plan; one that was put in comes after it.
 *
 * @param index its place in the outing as it went
 */
export function placeInPlan(
	planned: readonly OutingPhase[],
	phase: OutingPhase,
	index: number
): number {
	if (planned[index] === phase) return index;
	const place = planned.lastIndexOf(phase);
	return place === -1 ? planned.length : place;
}
