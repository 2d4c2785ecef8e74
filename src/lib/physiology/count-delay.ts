/** How a pulse falls after stopping, towards a level, with one time constant. */
export interface PulseFall {
	readonly fromBpm: number;
	readonly towardsBpm: number;
	/** Seconds in which 63 % of the way is gone. */
	readonly timeConstantSeconds: number;
}

/** Sitting still after light exercise, sedentary students (source barak2011, table 2). */
export const SITTING_AFTER_EFFORT: PulseFall = {
	fromBpm: 144,
	towardsBpm: 100,
	timeConstantSeconds: 50.6
};

/**
 * How far a count by hand after stopping lies from the pulse at the stop: zero or below. For: saying
 * why a count after a run reads low, never for correcting one.
 *
 * The pulse falls exponentially from the moment of stopping; the count sees its mean over the
 * counting time, which starts after the delay. Own derivation from the first-order fall of barak2011
 * (athletes and sedentary students, after light exercise). It gives 20 beats for a 15 s wait and a
 * 15 s count of an athlete sitting still; deVan2005 measured 20 to 27 in 20 active adults. Not valid
 * while walking on, where the pulse falls more slowly, nor after a maximal effort.
 *
 * @param delaySeconds from stopping to the start of the count, zero or more
 * @param countSeconds length of the count, above zero
 * @returns beats a minute
 * @throws RangeError for a negative delay, or a count or time constant that is not above zero
 * @example countDelayError({ fromBpm: 147, towardsBpm: 89, timeConstantSeconds: 52.5 }, 15, 15) // -20.09
 */
export function countDelayError(
	fall: PulseFall,
	delaySeconds: number,
	countSeconds: number
): number {
	if (!(delaySeconds >= 0)) throw new RangeError('countDelayError requires a delay of 0 or more');
	if (!(countSeconds > 0 && fall.timeConstantSeconds > 0)) {
		throw new RangeError('countDelayError requires a count and a time constant above 0');
	}
	const tau = fall.timeConstantSeconds;
	const leftAtStart = Math.exp(-delaySeconds / tau);
	const leftAtEnd = Math.exp(-(delaySeconds + countSeconds) / tau);
	const meanLeft = (tau / countSeconds) * (leftAtStart - leftAtEnd);
	return (fall.fromBpm - fall.towardsBpm) * (meanLeft - 1);
}
