import { withinPlausible } from './limits.ts';
import { truncatedBelow } from './truncated-normal.ts';

export interface Maximum {
	/** Beats a minute, not rounded. */
	readonly bpm: number;
	/** One standard deviation of what the true maximum may be about it. */
	readonly spreadBpm: number;
	readonly basis: 'age' | 'supervised-test' | 'age-and-highest-seen';
}

/** Standard error of Tanaka's equation in sedentary adults, n = 762 (source sarzynski2013). */
export const AGE_MAXIMUM_SPREAD_BPM = 11.4;

/** What a supervised maximum still varies by from day to day. From memory, no source. */
export const TESTED_MAXIMUM_SPREAD_BPM = 3;

/** Beats a minute at no age at all, and beats fewer for each year (source tanaka2001). */
export const TANAKA = { beginsAtBpm: 208, lessPerYearBpm: 0.7 } as const;

/**
 * Maximum pulse predicted from age: 208 less seven tenths of the age in years.
 * Source tanaka2001, a meta-analysis of 351 studies of 18,712 healthy people, checked on 514 people
 * of 18 to 81 years. Not valid under 18, nor with medicines or conditions that slow the heart.
 * Typical error of one person: 11.4 bpm (sarzynski2013, sedentary adults).
 *
 * @returns beats a minute, not rounded
 * @throws RangeError for an age that nobody has
 * @example tanakaMaximum(40) // 180
 */
export function tanakaMaximum(ageYears: number): number {
	if (!withinPlausible('ageYears', ageYears)) {
		throw new RangeError('tanakaMaximum requires an age from 0 to 120 years');
	}
	return TANAKA.beginsAtBpm - TANAKA.lessPerYearBpm * ageYears;
}

/**
 * The maximum of someone who was never tested, with its spread.
 * @throws RangeError for an age that nobody has
 * @example ageMaximum(45).bpm // 176.5
 * @example ageMaximum(45).spreadBpm // 11.4
 */
export function ageMaximum(ageYears: number): Maximum {
	return { bpm: tanakaMaximum(ageYears), spreadBpm: AGE_MAXIMUM_SPREAD_BPM, basis: 'age' };
}

/**
 * The maximum measured in a supervised test. It replaces every estimate. Nobody who begins to run
 * is ever asked to make such a test for this.
 * @throws RangeError for a maximum that is not plausible
 * @example testedMaximum(171).spreadBpm // 3
 */
export function testedMaximum(bpm: number): Maximum {
	if (!withinPlausible('maximumBpm', bpm)) {
		throw new RangeError('testedMaximum requires a plausible maximum pulse');
	}
	return { bpm, spreadBpm: TESTED_MAXIMUM_SPREAD_BPM, basis: 'supervised-test' };
}

/**
 * What a trusted high pulse says about a maximum that was predicted from age: the true maximum
 * cannot lie below a pulse that was reached, so that part of the normal distribution is cut away,
 * and its mean and spread change (source johnsonKotz1994, section 13.10).
 *
 * This is for showing. It never raises a band by itself: one wrong strap reading would. A maximum
 * from a supervised test is returned as it is, for a reading above it is more likely a fault.
 *
 * @param highestSeenBpm from a chest strap in contact, held for 30 s, confirmed by the runner
 * @throws RangeError for an implausible pulse, or a maximum that has been cut already
 * @example withHighestSeen(ageMaximum(40), 180).bpm // 189.0959
 * @example withHighestSeen(ageMaximum(40), 180).spreadBpm // 6.8720
 */
export function withHighestSeen(maximum: Maximum, highestSeenBpm: number): Maximum {
	if (!withinPlausible('pulseBpm', highestSeenBpm)) {
		throw new RangeError('withHighestSeen requires a plausible pulse');
	}
	switch (maximum.basis) {
		case 'supervised-test':
			return maximum;
		case 'age-and-highest-seen':
			throw new RangeError('withHighestSeen requires a maximum that was not cut before');
		case 'age': {
			const cut = truncatedBelow(maximum.bpm, maximum.spreadBpm, highestSeenBpm);
			return { bpm: cut.mean, spreadBpm: cut.spread, basis: 'age-and-highest-seen' };
		}
	}
}
