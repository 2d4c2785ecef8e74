import type { SpeedCapacity } from './capacity.ts';
import { limits, speedLimit } from './limits.ts';
import type { Gait } from './metabolic-cost.ts';
import {
	UPTAKE_ERROR_FRACTION,
	gradeForUptake,
	speedForUptake,
	uptakePerSpeed
} from './metabolic-cost.ts';
import { metresPerMinuteFromKmPerHour } from './units.ts';
import { uptakeAtReserve } from './uptake-reserve.ts';

export interface SpeedTarget {
	readonly gait: Gait;
	/** Edges of the target as fractions of reserve, 0 to 1. */
	readonly lowFraction: number;
	readonly highFraction: number;
	readonly capacity: SpeedCapacity;
	/** Rise over distance as a fraction. */
	readonly grade: number;
}

/** Incline that reaches the target at the fastest natural walk, edges as fractions, 0.15 at most. */
export interface InclineOffer {
	readonly speedMetresPerMinute: number;
	readonly lowGrade: number;
	readonly highGrade: number;
}

export type SpeedAnswer =
	| {
			readonly kind: 'range';
			readonly lowMetresPerMinute: number;
			readonly highMetresPerMinute: number;
			/** One standard deviation of the faster edge; that of the slower one is never larger. */
			readonly spreadMetresPerMinute: number;
	  }
	/** Even its gentle edge is faster than people walk. No incline where 15 % would not reach it. */
	| { readonly kind: 'too-fast-to-walk'; readonly incline: InclineOffer | null }
	/** Even its firm edge is slower than people walk: on an incline, a flatter one may fit. */
	| { readonly kind: 'no-walk-this-gentle' }
	/** Even its firm edge is slower than people run: short runs with walks between. */
	| { readonly kind: 'no-run-this-gentle' };

/** Typical error of a speed for one person, as a fraction of it, from and to. Our own working out. */
export const SPEED_ERROR_FRACTION = { low: 0.15, high: 0.2 } as const;

/**
 * Natural speeds that keep a person between two fractions of reserve. For: the treadmill and the
 * pace of a phase. The uptake at each fraction, and the speed that takes it, clipped to natural
 * walking (3 to 7 km/h) or running (from 5.0 km/h: from 80 m/min the running equation holds when
 * truly running). Where no natural speed fits, it says so instead of giving the nearest.
 * Sources acsmMetabolic, swain1998; people, limits and errors as in oxygenUptake and uptakeAtReserve.
 * Typical error 15 to 20 %: 7 % of the uptake and the spread of the capacity, as independent.
 *
 * @throws RangeError unless 0 <= lowFraction <= highFraction <= 1, or for a capacity from questions
 * @example speedForReserve({ gait: 'run', lowFraction: 0.5, highFraction: 0.62, capacity: { mlPerKgPerMinute: 45, spread: 3, basis: 'measured' }, grade: 0 }).lowMetresPerMinute // 103.75
 * @example speedForReserve({ gait: 'run', lowFraction: 0.3, highFraction: 0.4, capacity: { mlPerKgPerMinute: 35, spread: 3, basis: 'measured' }, grade: 0 }).kind // 'no-run-this-gentle'
 */
export function speedForReserve(target: SpeedTarget): SpeedAnswer {
	requireSpeedTarget(target);
	const { gait, capacity, grade } = target;
	const lowUptake = uptakeAtReserve(target.lowFraction, capacity.mlPerKgPerMinute);
	const highUptake = uptakeAtReserve(target.highFraction, capacity.mlPerKgPerMinute);
	const low = speedForUptake({ gait, uptake: lowUptake, grade });
	const high = speedForUptake({ gait, uptake: highUptake, grade });
	const natural = speedLimit(gait).valid;
	const slowest = metresPerMinuteFromKmPerHour(natural.low);
	const fastest = metresPerMinuteFromKmPerHour(natural.high);
	if (high < slowest)
		return { kind: gait === 'walk' ? 'no-walk-this-gentle' : 'no-run-this-gentle' };
	if (gait === 'walk' && low > fastest) {
		return { kind: 'too-fast-to-walk', incline: inclineFor(lowUptake, highUptake, fastest) };
	}
	return {
		kind: 'range',
		lowMetresPerMinute: Math.min(Math.max(low, slowest), fastest),
		highMetresPerMinute: Math.min(high, fastest),
		spreadMetresPerMinute: speedSpread(target, highUptake)
	};
}

/**
 * With the fraction f held: the capacity's error moves the uptake by f times it, and the equation's
 * moves it by its share of the whole; the slope turns both into speed.
 */
function speedSpread(
	{ gait, grade, capacity, highFraction }: SpeedTarget,
	highUptake: number
): number {
	const fromCapacity = highFraction * capacity.spread;
	const fromEquation = UPTAKE_ERROR_FRACTION * highUptake;
	return Math.hypot(fromCapacity, fromEquation) / uptakePerSpeed(gait, grade);
}

function inclineFor(
	lowUptake: number,
	highUptake: number,
	speedMetresPerMinute: number
): InclineOffer | null {
	const gradeFor = (uptake: number) =>
		gradeForUptake({ gait: 'walk', uptake, speedMetresPerMinute });
	const steepest = limits.inclinePercent.plausible.high / 100;
	const lowGrade = gradeFor(lowUptake);
	if (lowGrade > steepest) return null;
	return { speedMetresPerMinute, lowGrade, highGrade: Math.min(gradeFor(highUptake), steepest) };
}

function requireSpeedTarget({ lowFraction, highFraction, capacity }: SpeedTarget): void {
	if (!(lowFraction >= 0 && lowFraction <= highFraction && highFraction <= 1)) {
		throw new RangeError('speedForReserve requires 0 <= lowFraction <= highFraction <= 1');
	}
	if (!(capacity.spread >= 0)) {
		throw new RangeError('speedForReserve requires a capacity with a spread of 0 or more');
	}
	if ((capacity.basis as string) === 'questions') {
		throw new RangeError('speedForReserve requires a capacity that gives speed');
	}
}
