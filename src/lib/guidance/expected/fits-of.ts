import type { LongestRun } from '../../physiology/longest-run.ts';
import type { ShortestRecovery } from '../../physiology/shortest-recovery.ts';
import type { CoursePhase } from './course-steps.ts';
import { longestSeconds, shortestSeconds } from './phase-fit.ts';

/** How the lengths of an outing fit one runner, in an answer for all of its runs and walks. */
export interface FitsOf {
	/** How long every run may last: the strictest of them. Null without a run. */
	readonly longestRun: LongestRun | null;
	/** How long every recovery has to last: the one that needs most. Null without one. */
	readonly shortestRecovery: ShortestRecovery | null;
	/** True where more is expected somewhere than is open to this runner for now. */
	readonly isOverTop: boolean;
}

/** An illustration. */
export function fitsOf(phases: readonly CoursePhase[]): FitsOf {
	let longestRun: LongestRun | null = null;
	let shortest: ShortestRecovery | null = null;
	for (const { fit } of phases) {
		if (fit.kind === 'run') {
			const isStricter =
				longestRun === null || longestSeconds(fit.longest) < longestSeconds(longestRun);
			if (isStricter) longestRun = fit.longest;
		}
		if (fit.kind === 'recovery') {
			const needsMore =
				shortest === null || shortestSeconds(fit.shortest) > shortestSeconds(shortest);
			if (needsMore) shortest = fit.shortest;
		}
	}
	return {
		longestRun,
		shortestRecovery: shortest,
		isOverTop: phases.some((phase) => phase.isOverTop)
	};
}
