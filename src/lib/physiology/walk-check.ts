import { plausibleOrRefused } from './capacity.ts';
import type { CapacityAnswer, CapacityRefusal, SpeedCapacity } from './capacity.ts';
import { leastSquaresLine, lineStandardError } from './least-squares.ts';
import { withinPlausible } from './limits.ts';
import { oxygenUptake } from './metabolic-cost.ts';
import type { PulseEstimate } from './reserve.ts';
import { kmPerHourFromMetresPerMinute } from './units.ts';

/** One treadmill walk of about three minutes, and the pulse at its end. */
export interface WalkStage {
	readonly speedMetresPerMinute: number;
	/** Rise over distance as a fraction. */
	readonly grade: number;
	readonly pulseBpm: number;
}

/** A line through fewer points says nothing about its own error. */
const FEWEST_STAGES = 3;

/** Less rise than this is mostly the scatter of the pulse. Common practice, no source. */
const LEAST_RISE_BPM = 10;

/** How far a pulse strays from a smooth course (source wang2021, first-order model). */
const PULSE_SCATTER_BPM = 2.27;

/** A check less sure than four questions is not worth its number (source jackson1990). */
const WIDEST_SPREAD = 5.7;

/**
 * Capacity from treadmill walks: the straight line of uptake over pulse, carried to the maximum. For:
 * a speed for people who may only do moderate effort. Uptake comes from the walking equation.
 * Sources acsmMetabolic, submaximalTextbooks. Not valid with medicines or conditions that change the pulse,
 * with a hand on the rail, or when pulse was read after stopping. Scatter of the pulse leans the
 * line to a lower capacity, the careful side. Typical error 10 to 20 % (from memory).
 * The spread joins the error of the line at the maximum and that of the maximum itself. As three
 * points can lie on a line by luck, each is held to stray by 2.27 bpm at least. The error of the
 * walking equation is not in it: speedForReserve counts it, once.
 *
 * @param stages three or more, in any order
 * @returns a capacity of basis 'walk-check', or why there is none
 * @example walkCheck([{ speedMetresPerMinute: 80.4, grade: 0, pulseBpm: 98 }, { speedMetresPerMinute: 93.8, grade: 0, pulseBpm: 106 }, { speedMetresPerMinute: 107.2, grade: 0, pulseBpm: 115 }], { bpm: 180, spreadBpm: 11.4 }).capacity.mlPerKgPerMinute // 24.480
 */
export function walkCheck(
	stages: readonly WalkStage[],
	maximum: PulseEstimate
): CapacityAnswer<SpeedCapacity> {
	const reasons = stageRefusals(stages, maximum);
	if (reasons.length > 0) return { kind: 'refused', reasons };
	const points = stages.map(({ speedMetresPerMinute, grade, pulseBpm }) => ({
		across: pulseBpm,
		up: oxygenUptake({ gait: 'walk', speedMetresPerMinute, grade })
	}));
	const line = leastSquaresLine(points);
	if (!(line.slope > 0)) return refusedStages('pulse-does-not-rise');
	const scatter = Math.max(line.scatter, line.slope * PULSE_SCATTER_BPM);
	const lineError = lineStandardError({ ...line, scatter }, maximum.bpm);
	const spread = Math.hypot(lineError, line.slope * maximum.spreadBpm);
	if (spread > WIDEST_SPREAD) return refusedStages('too-unsure');
	const mlPerKgPerMinute = line.intercept + line.slope * maximum.bpm;
	return plausibleOrRefused({ mlPerKgPerMinute, spread, basis: 'walk-check' });
}

function stageRefusals(stages: readonly WalkStage[], maximum: PulseEstimate): CapacityRefusal[] {
	if (stages.length < FEWEST_STAGES) return [{ code: 'not-enough-stages', field: 'stages' }];
	const reasons: CapacityRefusal[] = [];
	stages.forEach((stage, index) => {
		const refuse = (code: CapacityRefusal['code'], field: keyof WalkStage) =>
			reasons.push({ code, field: `stages.${index}.${field}` });
		const speedKmPerHour = kmPerHourFromMetresPerMinute(stage.speedMetresPerMinute);
		if (!withinPlausible('walkingSpeedKmPerHour', speedKmPerHour)) {
			refuse('out-of-limits', 'speedMetresPerMinute');
		}
		if (!withinPlausible('inclinePercent', stage.grade * 100)) refuse('out-of-limits', 'grade');
		if (!withinPlausible('pulseBpm', stage.pulseBpm)) refuse('out-of-limits', 'pulseBpm');
		else if (stage.pulseBpm >= maximum.bpm) refuse('pulse-above-maximum', 'pulseBpm');
	});
	if (reasons.length > 0) return reasons;
	const pulses = stages.map((stage) => stage.pulseBpm);
	if (Math.max(...pulses) - Math.min(...pulses) < LEAST_RISE_BPM) {
		reasons.push({ code: 'pulse-rises-too-little', field: 'stages' });
	}
	return reasons;
}

function refusedStages(code: CapacityRefusal['code']): CapacityAnswer<SpeedCapacity> {
	return { kind: 'refused', reasons: [{ code, field: 'stages' }] };
}
