/** How a person moves. It chooses the equation: one speed, walked or run, costs different oxygen. */
export type Gait = 'walk' | 'run';

export interface TreadmillEffort {
	readonly gait: Gait;
	readonly speedMetresPerMinute: number;
	/** Rise over distance as a fraction: 0.02 is an incline of 2 %. */
	readonly grade: number;
}

/** Oxygen uptake at rest, mL/kg/min: one MET by convention (source acsmMetabolic). */
export const REST_UPTAKE = 3.5;

/** One standard deviation of the equations' error, as a fraction of the whole uptake. From memory. */
export const UPTAKE_ERROR_FRACTION = 0.07;

/** mL/kg/min for each metre a minute on the level, and each climbed (source acsmMetabolic). */
export const uptakeCost: Readonly<
	Record<Gait, { readonly level: number; readonly climb: number }>
> = {
	walk: { level: 0.1, climb: 1.8 },
	run: { level: 0.2, climb: 0.9 }
};

/** Published tables of these equations end at 16 %, treadmills at 15 %. */
const STEEPEST_GRADE = 0.16;

/**
 * What each metre a minute adds to the uptake: the slope of oxygenUptake over speed.
 * @returns mL/kg/min for each metre a minute
 * @throws RangeError for a grade outside 0 to 0.16: the equations do not know downhill
 * @example uptakePerSpeed('walk', 0.05) // 0.19
 */
export function uptakePerSpeed(gait: Gait, grade: number): number {
	if (!(grade >= 0 && grade <= STEEPEST_GRADE)) {
		throw new RangeError('uptakePerSpeed requires a grade from 0 to 0.16, as a fraction');
	}
	return uptakeCost[gait].level + uptakeCost[gait].climb * grade;
}

/**
 * Oxygen uptake of steady walking or running: the metabolic equations of the American College of
 * Sports Medicine. For: what a speed asks of a person.
 * Walking: a tenth of the speed, plus 1.8 times the climb, plus rest. Running: a fifth of the speed,
 * plus 0.9 times the climb, plus rest. The climb is the speed times the grade.
 * Source acsmMetabolic table 6.3, from healthy adults in steady state without a hand on the rail. Walking
 * holds from 50 to 100 m/min, above if truly walking; running from 134 m/min, from 80 if truly
 * running. Not downhill, not in the first minutes. Typical error 7 % of the uptake (from memory).
 *
 * @returns mL/kg/min
 * @throws RangeError for a speed below zero or a grade outside 0 to 0.16
 * @example oxygenUptake({ gait: 'walk', speedMetresPerMinute: 100, grade: 0 }) // 13.5
 * @example oxygenUptake({ gait: 'run', speedMetresPerMinute: 120, grade: 0 }) // 27.5
 */
export function oxygenUptake({ gait, speedMetresPerMinute, grade }: TreadmillEffort): number {
	if (!(speedMetresPerMinute >= 0 && speedMetresPerMinute < Infinity)) {
		throw new RangeError('oxygenUptake requires a speed of 0 or more, in metres a minute');
	}
	return speedMetresPerMinute * uptakePerSpeed(gait, grade) + REST_UPTAKE;
}

/**
 * Speed at which steady walking or running takes a given uptake: oxygenUptake solved for the speed,
 * with the same source, people, limits and error. It may answer with a speed at which nobody walks
 * or runs; speedForReserve keeps to natural ones.
 *
 * @param effort.uptake mL/kg/min, at least that of rest
 * @returns metres a minute
 * @throws RangeError for an uptake below rest or a grade outside 0 to 0.16
 * @example speedForUptake({ gait: 'run', uptake: 28, grade: 0 }) // 122.5
 */
export function speedForUptake(effort: {
	readonly gait: Gait;
	readonly uptake: number;
	readonly grade: number;
}): number {
	if (!(effort.uptake >= REST_UPTAKE && effort.uptake < Infinity)) {
		throw new RangeError('speedForUptake requires an uptake of at least 3.5 mL/kg/min');
	}
	return (effort.uptake - REST_UPTAKE) / uptakePerSpeed(effort.gait, effort.grade);
}

/**
 * Grade at which a speed takes a given uptake: oxygenUptake solved for the grade. Below zero means
 * that even the level takes more; the equation does not hold there.
 *
 * @param effort.uptake mL/kg/min
 * @returns a fraction
 * @throws RangeError unless the speed is above zero
 * @example gradeForUptake({ gait: 'walk', uptake: 22.5, speedMetresPerMinute: 100 }) // 0.05
 */
export function gradeForUptake(effort: {
	readonly gait: Gait;
	readonly uptake: number;
	readonly speedMetresPerMinute: number;
}): number {
	if (!(effort.speedMetresPerMinute > 0)) {
		throw new RangeError('gradeForUptake requires a speed above 0, in metres a minute');
	}
	const perMetre = (effort.uptake - REST_UPTAKE) / effort.speedMetresPerMinute;
	return (perMetre - uptakeCost[effort.gait].level) / uptakeCost[effort.gait].climb;
}

/**
 * Uptake in multiples of that at rest (METs). For: the doctor's page. Source acsmMetabolic; it is a
 * convention for all adults, and the true resting uptake of many is lower.
 * @param uptake mL/kg/min
 * @example metsOf(28) // 8
 */
export function metsOf(uptake: number): number {
	return uptake / REST_UPTAKE;
}
