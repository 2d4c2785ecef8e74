import { axes, intensities } from './intensity-axes.ts';
import type { Intensity } from './intensity-axes.ts';
import type { Kinetics } from './pulse-kinetics.ts';
import { secondsUntil, usualKinetics } from './pulse-kinetics.ts';
import type { PulseStep } from './pulse-response.ts';
import { pulseEdges } from './pulse-response.ts';

/**
 * Seconds that the expected pulse spends below a level, from the exact times at which it crosses. A
 * pulse that stands at the level is not below it. An illustration; sources, people and error as in
 * pulseAfter.
 * @throws RangeError for a duration below zero
 * @example secondsBelow([{ durationSeconds: 300, steadyBpm: 140 }], 100, 125.8854) // 60
 */
export function secondsBelow(
	steps: readonly PulseStep[],
	startBpm: number,
	levelBpm: number,
	kinetics: Kinetics = usualKinetics
): number {
	const edges = pulseEdges(steps, startBpm, kinetics);
	let seconds = 0;
	steps.forEach(({ steadyBpm, durationSeconds }, phase) => {
		const fromBpm = edges[phase]!.bpm;
		const until = secondsUntil(fromBpm, steadyBpm, levelBpm, kinetics);
		const beforeCrossing = Math.min(until, durationSeconds);
		if (steadyBpm < fromBpm) {
			seconds += fromBpm < levelBpm ? durationSeconds : durationSeconds - beforeCrossing;
		} else {
			seconds += fromBpm < levelBpm ? beforeCrossing : 0;
		}
	});
	return seconds;
}

/**
 * Seconds in each class of intensity by heart-rate reserve: what lies below the upper edge of a
 * class, less what lies below its lower one. They add up to the whole time. An illustration; sources
 * garber2011 for the classes, and as in pulseAfter.
 * @throws RangeError unless the maximum is above the resting pulse, or for a duration below zero
 * @example secondsByIntensity([{ durationSeconds: 90, steadyBpm: 125 }], 125, { restingBpm: 70, maximumBpm: 180 }).moderate // 90
 */
export function secondsByIntensity(
	steps: readonly PulseStep[],
	startBpm: number,
	reserve: { readonly restingBpm: number; readonly maximumBpm: number },
	kinetics: Kinetics = usualKinetics
): Record<Intensity, number> {
	const { restingBpm, maximumBpm } = reserve;
	if (!(maximumBpm > restingBpm)) {
		throw new RangeError('secondsByIntensity requires a maximum above the resting pulse');
	}
	const seconds = {} as Record<Intensity, number>;
	let belowLower = 0;
	intensities.forEach((intensity, place) => {
		const percent = axes.reservePercent.cutPoints[place];
		const upperBpm =
			percent === undefined ? Infinity : restingBpm + (percent / 100) * (maximumBpm - restingBpm);
		const belowUpper = secondsBelow(steps, startBpm, upperBpm, kinetics);
		seconds[intensity] = belowUpper - belowLower;
		belowLower = belowUpper;
	});
	return seconds;
}
