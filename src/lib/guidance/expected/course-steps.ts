import { phasesOf, type Outing, type OutingPhase } from '../../outing/outing.ts';
import { shortenRuns } from '../../outing/shorten-runs.ts';
import { walkingOuting } from '../../outing/walking-outing.ts';
import { pulseEdges, type PulseStep } from '../../physiology/pulse-response.ts';
import {
	steadyPulse,
	type NoEstimateReason,
	type RunnerPulse
} from '../../physiology/steady-pulse.ts';
import type { Course } from './course.ts';
import { phaseDemand, type PhaseDemand } from './phase-demand.ts';
import { phaseFit, type PhaseFit } from './phase-fit.ts';

/** Where somebody stands who has just put on their shoes. Common practice, no source. */
export const START_SHARE = 0.1;

/** One phase of one runner; all but seconds are shares of the reserve. */
export interface CoursePhase extends PhaseDemand {
	readonly phase: OutingPhase;
	readonly startSeconds: number;
	readonly steadyShare: number;
	readonly startShare: number;
	readonly endShare: number;
	/** The highest expected in it; for a phase in which the pulse falls, its start. */
	readonly peakShare: number;
	readonly fit: PhaseFit;
	/** True where more is expected than is open to this runner for now. */
	readonly isOverTop: boolean;
}

export type CourseSteps =
	| {
			readonly kind: 'steps';
			readonly steps: readonly PulseStep[];
			readonly phases: readonly CoursePhase[];
	  }
	| {
			readonly kind: 'no-estimate';
			readonly reason: NoEstimateReason;
			/** Of the phases written out, from zero. */
			readonly phaseIndex: number;
	  };

/** The pulse of a course on the scale of the reserve: 0 at rest, 1 at the maximum. */
export function sharesOf({ restingSpread, maximumSpread, capacity }: Course): RunnerPulse {
	return {
		resting: { bpm: 0, spreadBpm: restingSpread },
		maximum: { bpm: 1, spreadBpm: maximumSpread },
		capacity
	};
}

/**
 * A runner's way through an outing phase by phase, in exact steps, runs as brisk walks where the
 * runner walks, and cut where theirs are short for now. An illustration.
 */
export function courseSteps(course: Course, outing: Outing): CourseSteps {
	const written = phasesOf(asDone(course, outing));
	const runner = sharesOf(course);
	const asked: (PhaseDemand & { steadyShare: number })[] = [];
	for (const [phaseIndex, phase] of written.entries()) {
		const asks = phaseDemand(phase, course);
		const steady = steadyPulse(asks.demand, runner);
		if (steady.kind === 'no-estimate') return { ...steady, phaseIndex };
		asked.push({ ...asks, steadyShare: steady.bpm });
	}
	const steps = asked.map(({ steadyShare }, nth) => ({
		durationSeconds: written[nth]!.seconds,
		steadyBpm: steadyShare
	}));
	const edges = pulseEdges(steps, START_SHARE);
	const phases = asked.map((asks, nth): CoursePhase => {
		const phase = written[nth]!;
		const { seconds: startSeconds, bpm: startShare } = edges[nth]!;
		const endShare = edges[nth + 1]!.bpm;
		const { steadyShare, range } = asks;
		const peakShare = Math.max(startShare, endShare);
		return {
			...asks,
			phase,
			startSeconds,
			startShare,
			endShare,
			peakShare,
			fit: phaseFit({ ...phase, startShare, steadyShare, upperEdge: range.high }),
			isOverTop: course.top !== null && endShare > course.top.share + 1e-9
		};
	});
	return { kind: 'steps', steps, phases };
}

/** An outing as a runner does it: walked, or with runs that are short for now. */
export function asDone(
	{ runs, longestRunSeconds }: Pick<Course, 'runs' | 'longestRunSeconds'>,
	outing: Outing
): Outing {
	if (!runs) return walkingOuting(outing);
	return longestRunSeconds === null ? outing : shortenRuns(outing, longestRunSeconds);
}
