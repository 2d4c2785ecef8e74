import { standardNormalCdf } from './normal-distribution.ts';

export interface Resting {
	/** Beats a minute: the mean of the mornings, not rounded. */
	readonly bpm: number;
	/** One standard deviation of that mean. */
	readonly spreadBpm: number;
	/** How many mornings it rests on. */
	readonly mornings: number;
}

/** A number of beats a minute and one standard deviation of it, both not rounded. */
export interface PulseEstimate {
	readonly bpm: number;
	readonly spreadBpm: number;
}

/**
 * Pulse at a fraction of heart-rate reserve: resting plus that fraction of maximum less resting.
 * Source karvonen1957 (young men on a treadmill; used for all adults since). The spread takes the
 * errors of both ends as independent: sqrt((1-f)^2 x resting spread^2 + f^2 x maximum spread^2).
 * Typical error at 60 % with a maximum predicted from age: 7 bpm. Not valid with medicines or
 * conditions that change how the heart answers effort.
 *
 * @param fraction of reserve, 0 to 1
 * @throws RangeError unless 0 <= fraction <= 1 and the maximum is above the resting pulse
 * @example targetAtFraction(0.6, { bpm: 70, spreadBpm: 3, mornings: 1 }, { bpm: 180, spreadBpm: 11.4, basis: 'age' }).bpm // 136
 * @example targetAtFraction(0.6, { bpm: 70, spreadBpm: 3, mornings: 1 }, { bpm: 180, spreadBpm: 11.4, basis: 'age' }).spreadBpm // 6.9445
 */
export function targetAtFraction(
	fraction: number,
	resting: PulseEstimate,
	maximum: PulseEstimate
): PulseEstimate {
	if (!(fraction >= 0 && fraction <= 1)) {
		throw new RangeError('targetAtFraction requires a fraction from 0 to 1');
	}
	if (!(maximum.bpm > resting.bpm)) {
		throw new RangeError('targetAtFraction requires a maximum above the resting pulse');
	}
	return {
		bpm: resting.bpm + fraction * (maximum.bpm - resting.bpm),
		spreadBpm: Math.hypot((1 - fraction) * resting.spreadBpm, fraction * maximum.spreadBpm)
	};
}

/**
 * Fraction of heart-rate reserve that a pulse stands at, the inverse of targetAtFraction. Source
 * karvonen1957. Not cut to 0 and 1: a pulse under rest or over the maximum says so.
 * @throws RangeError unless the maximum is above the resting pulse
 * @example reserveFractionOf(136, 70, 180) // 0.6
 */
export function reserveFractionOf(
	pulseBpm: number,
	restingBpm: number,
	maximumBpm: number
): number {
	if (!(maximumBpm > restingBpm)) {
		throw new RangeError('reserveFractionOf requires a maximum above the resting pulse');
	}
	return (pulseBpm - restingBpm) / (maximumBpm - restingBpm);
}

/**
 * Fraction of reserve that a fraction of maximum stands at. For: reading studies that report per cent
 * of maximum. The pulse at that fraction of maximum, less resting, over maximum less resting. Source
 * karvonen1957. Below zero where that pulse lies under rest.
 * @throws RangeError unless the maximum is above the resting pulse
 * @example reserveFractionAtMaximumFraction(0.73, 70, 187) // 0.5685
 */
export function reserveFractionAtMaximumFraction(
	maximumFraction: number,
	restingBpm: number,
	maximumBpm: number
): number {
	return reserveFractionOf(maximumFraction * maximumBpm, restingBpm, maximumBpm);
}

/**
 * Chance, 0 to 1, that a pulse truly is at or above a fraction of reserve, given how unsure resting
 * pulse and maximum are: the share of the normal distribution of the target that lies at or below
 * the pulse. Without any spread it is 0 or 1.
 * @throws RangeError as targetAtFraction
 * @example chanceOfAtLeast(0.6, 130, { bpm: 70, spreadBpm: 0 }, { bpm: 180, spreadBpm: 10 }) // 0.158655
 */
export function chanceOfAtLeast(
	fraction: number,
	pulseBpm: number,
	resting: PulseEstimate,
	maximum: PulseEstimate
): number {
	const target = targetAtFraction(fraction, resting, maximum);
	if (target.spreadBpm === 0) return pulseBpm >= target.bpm ? 1 : 0;
	return standardNormalCdf((pulseBpm - target.bpm) / target.spreadBpm);
}
