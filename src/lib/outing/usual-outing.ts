import { isRepeated, type Outing, type OutingPart } from './outing.ts';
import type { PhaseKind } from './phase.ts';
import { plainOuting } from './plain-outing.ts';
import { plainPhase } from './plain-phase.ts';

/** How long a phase is when it is added: a first guess to be changed. Common practice, no source. */
export const usualSeconds: Readonly<Record<PhaseKind, number>> = {
	'warm-up-walk': 420,
	'brisk-walk': 600,
	'steady-run': 30,
	'recovery-walk': 110,
	'cool-down-walk': 360
};

/**
 * A first outing, to be changed.
 *
 * @example usualOuting('Outing 1').parts[1].seconds // 30
 */
export function usualOuting(name: string): Outing {
	return { name, parts: plainOuting.map(({ kind, seconds }) => plainPhase(kind, seconds)) };
}

/**
 * The same for somebody who may walk.
 *
 * @example usualWalk('Walk 1').parts.length // 3
 */
export function usualWalk(name: string): Outing {
	return { name, parts: [usual('warm-up-walk'), usual('brisk-walk'), usual('cool-down-walk')] };
}

/**
 * Where something that is added goes: at the end, but before the cool-down walk.
 *
 * @example whereToAdd({ parts: [] }, { times: 2, phases: [] }) // 0
 */
export function whereToAdd({ parts }: Pick<Outing, 'parts'>, added: OutingPart): number {
	const isCoolDown = (part: OutingPart | undefined) =>
		part !== undefined && !isRepeated(part) && part.kind === 'cool-down-walk';
	return isCoolDown(parts.at(-1)) && !isCoolDown(added) ? parts.length - 1 : parts.length;
}

function usual(kind: PhaseKind) {
	return plainPhase(kind, usualSeconds[kind]);
}
