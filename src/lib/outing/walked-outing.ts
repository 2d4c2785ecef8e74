import { phasesOf } from './outing.ts';
import type { DoneOuting } from './settle-entries.ts';

/** A walk shorter than this is not one of the six of settling in. Our own choice, no source. */
export const LEAST_WALK_SECONDS = 600;

/**
 * Whether an outing was a walk that counts for settling in: it has ended, nobody ran in it, and the
 * phases that were done come to ten minutes. A phase that was put in on the way is a walk.
 */
export function isWalkingOuting({
	started,
	ended,
	phases
}: Pick<DoneOuting, 'started' | 'ended' | 'phases'>): boolean {
	if (started === null || ended === null) return false;
	const planned = phasesOf(started.outing);
	const moved = phases.filter(({ activeSeconds }) => activeSeconds > 0);
	if (moved.some(({ phase }) => planned[phase]?.kind === 'steady-run')) return false;
	return moved.reduce((sum, { activeSeconds }) => sum + activeSeconds, 0) >= LEAST_WALK_SECONDS;
}
