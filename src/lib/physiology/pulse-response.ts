import type { Kinetics } from './pulse-kinetics.ts';
import { pulseAfter, pulseArea, usualKinetics } from './pulse-kinetics.ts';

/** A phase of even effort: how long, and the pulse it would settle at. */
export interface PulseStep {
	readonly durationSeconds: number;
	readonly steadyBpm: number;
}

export interface PulsePoint {
	/** From the start of the first phase. */
	readonly seconds: number;
	readonly bpm: number;
}

/**
 * Pulse at the start of the first phase and at the end of each: one point more than there are
 * phases. Each phase is one exact exponential step, so splitting a phase changes nothing. An
 * illustration; sources, people and error as in pulseAfter.
 * @throws RangeError for a duration that is not a finite time of zero seconds or more
 * @example pulseEdges([{ durationSeconds: 60, steadyBpm: 160 }], 100)[1].bpm // 138.8280
 */
export function pulseEdges(
	steps: readonly PulseStep[],
	startBpm: number,
	kinetics: Kinetics = usualKinetics
): PulsePoint[] {
	const edges: PulsePoint[] = [{ seconds: 0, bpm: startBpm }];
	let seconds = 0;
	let bpm = startBpm;
	for (const step of steps) {
		if (!(step.durationSeconds >= 0 && step.durationSeconds < Infinity)) {
			throw new RangeError('pulseEdges requires durations of 0 seconds or more');
		}
		bpm = pulseAfter(bpm, step.steadyBpm, step.durationSeconds, kinetics);
		seconds += step.durationSeconds;
		edges.push({ seconds, bpm });
	}
	return edges;
}

/**
 * Expected pulse through an outing, a point at every so many seconds from zero, and one at the end.
 * An illustration. The highest point of the course may lie between two of these: see expectedPeak.
 * @throws RangeError for an interval that is not above zero, or a duration below zero
 * @example expectedCurve([{ durationSeconds: 60, steadyBpm: 140 }], 100, 60)[1].bpm // 125.8854
 */
export function expectedCurve(
	steps: readonly PulseStep[],
	startBpm: number,
	everySeconds: number,
	kinetics: Kinetics = usualKinetics
): PulsePoint[] {
	if (!(everySeconds > 0)) throw new RangeError('expectedCurve requires an interval above 0 s');
	const edges = pulseEdges(steps, startBpm, kinetics);
	const points: PulsePoint[] = [];
	for (let phase = 0; phase < steps.length; phase++) {
		const from = edges[phase]!;
		const { steadyBpm } = steps[phase]!;
		const until = edges[phase + 1]!.seconds;
		let seconds = points.length * everySeconds;
		while (seconds < until) {
			const bpm = pulseAfter(from.bpm, steadyBpm, seconds - from.seconds, kinetics);
			points.push({ seconds, bpm });
			seconds = points.length * everySeconds;
		}
	}
	points.push(edges[edges.length - 1]!);
	return points;
}

/**
 * The highest expected pulse and when it comes. Within a phase the pulse only rises or only falls,
 * so it stands at an edge. The first of equals. An illustration.
 * @throws RangeError for a duration below zero
 * @example expectedPeak([{ durationSeconds: 60, steadyBpm: 160 }, { durationSeconds: 90, steadyBpm: 100 }], 100).seconds // 60
 */
export function expectedPeak(
	steps: readonly PulseStep[],
	startBpm: number,
	kinetics: Kinetics = usualKinetics
): PulsePoint {
	return pulseEdges(steps, startBpm, kinetics).reduce((highest, edge) =>
		edge.bpm > highest.bpm ? edge : highest
	);
}

/**
 * Mean expected pulse over the whole time, from the exact area under each phase. An illustration.
 * @returns beats a minute
 * @throws RangeError unless the phases last longer than zero seconds together
 * @example expectedMean([{ durationSeconds: 60, steadyBpm: 120 }], 120) // 120
 */
export function expectedMean(
	steps: readonly PulseStep[],
	startBpm: number,
	kinetics: Kinetics = usualKinetics
): number {
	const edges = pulseEdges(steps, startBpm, kinetics);
	const totalSeconds = edges[edges.length - 1]!.seconds;
	if (!(totalSeconds > 0)) throw new RangeError('expectedMean requires phases that last');
	let area = 0;
	steps.forEach(({ steadyBpm, durationSeconds }, phase) => {
		area += pulseArea(edges[phase]!.bpm, steadyBpm, durationSeconds, kinetics);
	});
	return area / totalSeconds;
}
