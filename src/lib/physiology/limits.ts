import { pulseLimit } from './pulse-limit.ts';

/** A closed range and the reason for its edges. */
export interface Range {
	readonly low: number;
	readonly high: number;
	readonly why: string;
}

export interface Limit {
	/** Outside this it is a slip of the finger: ask again. */
	readonly plausible: Range;
	/** Outside this the formulas were not studied. Null where nothing narrower is known. */
	readonly valid: Range | null;
	readonly unit: string;
}

/** Plausible and studied ranges, once: the formulas, the forms and the input fields read these. */
export const limits = {
	ageYears: {
		unit: 'years',
		plausible: { low: 0, high: 120, why: 'nobody has been shown to live beyond about 120' },
		valid: { low: 18, high: 120, why: 'adults only; measured from 18 to 81, carried on above' }
	},
	restingBpm: {
		unit: 'bpm',
		plausible: { low: 30, high: 110, why: 'a calm adult outside this has miscounted, or is ill' },
		valid: { low: 40, high: 100, why: 'outside this: measure again, twice means advice first' }
	},
	maximumBpm: {
		unit: 'bpm',
		plausible: { low: 100, high: 230, why: 'slower is not a maximum, faster is a faulty reading' },
		valid: { low: 130, high: 220, why: 'four spreads about what age predicts from 18 to 81' }
	},
	reserveBpm: {
		unit: 'bpm',
		plausible: { low: 20, high: 200, why: 'the largest maximum less the smallest resting pulse' },
		valid: { low: 60, high: 170, why: 'under 60 bands are narrower than their own error' }
	},
	pulseBpm: pulseLimit,
	heightCentimetres: {
		unit: 'cm',
		plausible: { low: 100, high: 230, why: 'adults outside this are rarer than typing mistakes' },
		valid: null
	},
	weightKilograms: {
		unit: 'kg',
		plausible: { low: 30, high: 300, why: 'adults outside this are rarer than typing mistakes' },
		valid: null
	},
	bodyMassIndex: {
		unit: 'kg/m2',
		plausible: { low: 10, high: 80, why: 'outside this height or weight was mistyped' },
		valid: null
	},
	activityLevel: {
		unit: 'code 0 to 7, whole',
		plausible: { low: 0, high: 7, why: 'the eight steps of the activity code of Jackson 1990' },
		valid: null
	},
	capacity: {
		unit: 'mL/kg/min',
		plausible: {
			low: 7,
			high: 95,
			why: 'from two METs, too little to walk, to the best on record'
		},
		valid: null
	},
	walkingSpeedKmPerHour: {
		unit: 'km/h',
		plausible: { low: 1, high: 10, why: 'faster than 10 km/h nobody but a race walker walks' },
		valid: { low: 3, high: 7, why: 'natural walking; most people break into a run at about 7.2' }
	},
	runningSpeedKmPerHour: {
		unit: 'km/h',
		plausible: { low: 4, high: 25, why: 'slower is a walk, faster is a sprint' },
		valid: {
			low: 5,
			high: 20,
			why: 'the ACSM running equation holds from 80 m/min if truly running'
		}
	},
	inclinePercent: {
		unit: '%',
		plausible: { low: 0, high: 15, why: 'what treadmills offer' },
		valid: null
	},
	pulseCountSeconds: {
		unit: 's',
		plausible: { low: 5, high: 60, why: 'under 5 s one beat is worth more than 12 bpm' },
		valid: { low: 10, high: 60, why: 'under 10 s one beat is worth more than 6 bpm' }
	},
	pulseCount: {
		unit: 'beats',
		plausible: { low: 1, high: 230, why: 'the fastest plausible pulse, counted for a minute' },
		valid: null
	},
	mileWalkMinutes: {
		unit: 'min',
		plausible: { low: 8, high: 40, why: 'a mile at race walking pace, and at 2.4 km/h' },
		valid: null
	},
	effort: {
		unit: '0 to 10',
		plausible: { low: 0, high: 10, why: 'the ends of the scale' },
		valid: null
	},
	speechCount: {
		unit: 'numbers on one breath',
		plausible: { low: 3, high: 80, why: 'outside this the test was not done as described' },
		valid: null
	}
} as const satisfies Record<string, Limit>;

export type LimitName = keyof typeof limits;

/**
 * Whether a value could be true at all, edges included.
 * @example withinPlausible('restingBpm', 62) // true
 * @example withinPlausible('restingBpm', 620) // false
 */
export function withinPlausible(name: LimitName, value: number): boolean {
	return within(limits[name].plausible, value);
}

/**
 * Whether a value lies where the formulas were studied, edges included. Where no narrower range is
 * known, the plausible one answers.
 * @example withinValid('ageYears', 17) // false
 */
export function withinValid(name: LimitName, value: number): boolean {
	const limit: Limit = limits[name];
	return within(limit.valid ?? limit.plausible, value);
}

function within(range: Range, value: number): boolean {
	return value >= range.low && value <= range.high;
}

/**
 * The range of natural speeds of a gait.
 * @example speedLimit('walk').valid.high // 7
 */
export function speedLimit(gait: 'walk' | 'run') {
	return gait === 'walk' ? limits.walkingSpeedKmPerHour : limits.runningSpeedKmPerHour;
}
