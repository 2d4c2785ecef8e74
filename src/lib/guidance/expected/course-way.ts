import { phasesOf, type Outing, type OutingPhase } from '../../outing/outing.ts';
import { pulseAfter } from '../../physiology/pulse-kinetics.ts';
import { steadyPulse } from '../../physiology/steady-pulse.ts';
import { START_SHARE, sharesOf } from './course-steps.ts';
import type { Course } from './course.ts';
import { phaseDemand } from './phase-demand.ts';

/** An outing with its phases told apart by what they ask, once for all who do it. */
export interface Asked {
	readonly phases: readonly OutingPhase[];
	/** One phase of each sort. */
	readonly sorts: readonly OutingPhase[];
	/** Which of the sorts each phase is of. */
	readonly sortOf: readonly number[];
	/** When each phase begins, from the start of the outing. */
	readonly startSeconds: readonly number[];
}

/**
 * One runner's way through an outing in bare numbers, all shares of the reserve: a group is worked
 * out many times a second under a hand that drags. With all that is known of each phase: courseSteps.
 */
export interface CourseWay {
	/** The outing as this runner does it. */
	readonly asked: Asked;
	/** For each phase where the pulse would settle, and the upper edge of the runner's band. */
	readonly steady: Float64Array;
	readonly upper: Float64Array;
	/** Where the pulse stands at the start of the first phase and at the end of each. */
	readonly edges: Float64Array;
}

/** Two phases of a sort differ in nothing but their lengths and cues. */
export function askedOf(outing: Outing): Asked {
	const phases = phasesOf(outing);
	const sorts: OutingPhase[] = [];
	const known = new Map<string, number>();
	const sortOf = phases.map((phase) => {
		const { kind, target, speedKmh, inclinePercent } = phase;
		const asks = JSON.stringify([kind, target, speedKmh, inclinePercent]);
		const nth = known.get(asks) ?? sorts.push(phase) - 1;
		known.set(asks, nth);
		return nth;
	});
	let seconds = 0;
	const startSeconds = phases.map((phase) => (seconds += phase.seconds) - phase.seconds);
	return { phases, sorts, sortOf, startSeconds };
}

/**
 * An illustration. Null where a phase asks for more than any estimate.
 *
 * @param asked the outing as this runner does it: see asDone
 */
export function courseWay(course: Course, asked: Asked): CourseWay | null {
	const { phases, sorts, sortOf } = asked;
	const runner = sharesOf(course);
	const ofSort: { readonly steady: number; readonly upper: number }[] = [];
	for (const phase of sorts) {
		const { demand, range } = phaseDemand(phase, course);
		const steady = steadyPulse(demand, runner);
		if (steady.kind === 'no-estimate') return null;
		ofSort.push({ steady: steady.bpm, upper: range.high });
	}
	const steady = new Float64Array(phases.length);
	const upper = new Float64Array(phases.length);
	const edges = new Float64Array(phases.length + 1);
	edges[0] = START_SHARE;
	for (let nth = 0; nth < phases.length; nth++) {
		const one = ofSort[sortOf[nth]!]!;
		steady[nth] = one.steady;
		upper[nth] = one.upper;
		edges[nth + 1] = pulseAfter(edges[nth]!, one.steady, phases[nth]!.seconds);
	}
	return { asked, steady, upper, edges };
}
