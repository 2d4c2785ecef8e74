import { metsOf, oxygenUptake, speedForUptake, type Gait } from '../physiology/metabolic-cost.ts';
import { speedForReserve } from '../physiology/speed-for-reserve.ts';
import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromMilesPerHour,
	milesPerHourFromMetresPerMinute,
	minutesPerKm,
	minutesPerMile
} from '../physiology/units.ts';
import { reserveFractionOfUptake, uptakeAtReserve } from '../physiology/uptake-reserve.ts';
import {
	halfDigit,
	published,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

function uptake(gait: Gait, speedMetresPerMinute: number, grade: number): number {
	return oxygenUptake({ gait, speedMetresPerMinute, grade });
}

function mets(gait: Gait, speedMetresPerMinute: number, grade: number): number {
	return metsOf(uptake(gait, speedMetresPerMinute, grade));
}

function uptakeAtMilesPerHour(gait: Gait, speedMilesPerHour: number, grade: number): number {
	return uptake(gait, metresPerMinuteFromMilesPerHour(speedMilesPerHour), grade);
}

function speed(gait: Gait, uptakeAim: number, grade: number): number {
	return speedForUptake({ gait, uptake: uptakeAim, grade });
}

function kmPerHourForUptake(gait: Gait, uptakeAim: number, grade: number): number {
	return kmPerHourFromMetresPerMinute(speed(gait, uptakeAim, grade));
}

function levelRunAtEightMets(unit: 'm/min' | 'mph' | 'min/mile' | 'min/km'): number {
	const metresPerMinute = speed('run', 8 * 3.5, 0);
	switch (unit) {
		case 'm/min':
			return metresPerMinute;
		case 'mph':
			return milesPerHourFromMetresPerMinute(metresPerMinute);
		case 'min/mile':
			return minutesPerMile(metresPerMinute);
		case 'min/km':
			return minutesPerKm(metresPerMinute);
	}
}

function paceForUptake(gait: Gait, uptakeAim: number, grade: number): number {
	return minutesPerKm(speed(gait, uptakeAim, grade));
}

/** The level speed that costs what a speed on a grade does. */
function levelEqual(gait: Gait, speedMetresPerMinute: number, grade: number): number {
	return speed(gait, uptake(gait, speedMetresPerMinute, grade), 0);
}

function reservePercentAt(gait: Gait, speedMetresPerMinute: number, capacity: number): number {
	return 100 * reserveFractionOfUptake(uptake(gait, speedMetresPerMinute, 0), capacity);
}

/** Printed metres a minute and grade, then uptake and METs to one decimal. */
const treadmillTable = [
	['walk', 80.5, 0.02, 14.4, 4.1],
	['walk', 107.3, 0.04, 22, 6.3],
	['run', 134.1, 0.06, 37.6, 10.7],
	['run', 160.9, 0.08, 47.3, 13.5],
	['run', 187.7, 0.1, 57.9, 16.6],
	['run', 214.6, 0.12, 69.6, 19.9],
	['run', 241.4, 0.14, 82.2, 23.5],
	['run', 268.2, 0.16, 95.8, 27.4]
] as const;

const workedUptakes = [
	['walk', 50, 0, 8.5],
	['walk', 53.6, 0, 8.86],
	['walk', 67, 0, 10.2],
	['walk', 80.4, 0, 11.54],
	['walk', 93.8, 0, 12.88],
	['walk', 100, 0, 13.5],
	['walk', 80.4, 0.05, 18.776],
	['walk', 107.2, 0, 14.22],
	['walk', 120, 0, 15.5],
	['run', 134, 0, 30.3],
	['run', 134, 0.01, 31.506],
	['run', 160.8, 0, 35.66],
	['run', 107.2, 0, 24.94],
	['run', 120, 0, 27.5],
	['run', 150, 0.01, 34.85]
] as const;

const workedSpeeds = [
	['walk', 12, 0, 85],
	['walk', 14, 0, 105],
	['walk', 14, 0.02, 77.2059],
	['walk', 17.5, 0.05, 73.6842],
	['run', 28, 0, 122.5],
	['run', 24.5, 0, 105],
	['run', 28, 0.01, 117.2249],
	['run', 31.5, 0.02, 128.4404]
] as const;

const unfit = { mlPerKgPerMinute: 35, spread: 2, basis: 'measured' } as const;
const cost = 'uptake of steady walking or running';

export const rows: readonly PublishedValue[] = [
	published(
		cost,
		uptakeAtMilesPerHour,
		['walk', 3.5, 0.1],
		29.76,
		0.03,
		'acsmTeachingSlides',
		'seen'
	),
	published(
		'METs of walking uphill',
		mets,
		['walk', 93.8704, 0.1],
		8.5,
		0.01,
		'acsmTeachingSlides',
		'seen'
	),
	...treadmillTable.flatMap(([gait, metresPerMinute, grade, printedUptake, printedMets]) => [
		published(
			cost,
			uptake,
			[gait, metresPerMinute, grade],
			printedUptake,
			0.051,
			'plymouthTable',
			'seen'
		),
		published(
			'METs',
			mets,
			[gait, metresPerMinute, grade],
			printedMets,
			0.051,
			'plymouthTable',
			'seen'
		)
	]),
	...workedUptakes.map(([gait, metresPerMinute, grade, expected]) =>
		published(
			cost,
			uptake,
			[gait, metresPerMinute, grade],
			expected,
			1e-9,
			'acsmMetabolic',
			'computed'
		)
	),
	published('METs', mets, ['walk', 80.4, 0], 3.297, halfDigit(3), 'acsmMetabolic', 'computed'),
	published('METs', mets, ['walk', 93.8, 0], 3.68, halfDigit(3), 'acsmMetabolic', 'computed'),
	published('METs', mets, ['run', 134, 0], 8.657, halfDigit(3), 'acsmMetabolic', 'computed'),

	published(
		'level run at 8 METs',
		levelRunAtEightMets,
		['m/min'],
		122.5,
		1e-9,
		'acsmTeachingSlides',
		'seen'
	),
	published(
		'level run at 8 METs',
		levelRunAtEightMets,
		['mph'],
		4.57,
		halfDigit(2),
		'acsmTeachingSlides',
		'seen'
	),
	published(
		'level run at 8 METs',
		levelRunAtEightMets,
		['min/mile'],
		13.1,
		0.05,
		'acsmTeachingSlides',
		'seen'
	),
	published(
		'level run at 8 METs',
		levelRunAtEightMets,
		['min/km'],
		8.163,
		halfDigit(3),
		'acsmTeachingSlides',
		'computed'
	),
	...workedSpeeds.map(([gait, aim, grade, expected]) =>
		published(
			'speed for an uptake',
			speed,
			[gait, aim, grade],
			expected,
			halfDigit(4),
			'acsmMetabolic',
			'computed'
		)
	),
	published(
		'speed for an uptake, in km/h',
		kmPerHourForUptake,
		['walk', 12, 0],
		5.1,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'speed for an uptake, in km/h',
		kmPerHourForUptake,
		['walk', 14, 0],
		6.3,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'speed for an uptake, in km/h',
		kmPerHourForUptake,
		['run', 28, 0],
		7.35,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'speed for an uptake, in km/h',
		kmPerHourForUptake,
		['run', 28, 0.01],
		7.0335,
		halfDigit(4),
		'acsmMetabolic',
		'computed'
	),
	published(
		'pace for an uptake, in min/km',
		paceForUptake,
		['run', 28, 0.01],
		8.5306,
		halfDigit(4),
		'acsmMetabolic',
		'computed'
	),
	published(
		'level speed that costs the same',
		levelEqual,
		['run', 150, 0.01],
		156.75,
		1e-9,
		'jonesDoust1996',
		'computed'
	),

	published(
		'uptake at a fraction of reserve',
		uptakeAtReserve,
		[0.4, 35],
		16.1,
		1e-9,
		'swain1998',
		'computed'
	),
	published(
		'uptake at a fraction of reserve',
		uptakeAtReserve,
		[0.6, 35],
		22.4,
		1e-9,
		'swain1998',
		'computed'
	),
	published(
		'level walk for 40 % of reserve, capacity 35',
		speed,
		['walk', 16.1, 0],
		126,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'level walk for 60 % of reserve, capacity 35',
		speed,
		['walk', 22.4, 0],
		189,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'level run for 60 % of reserve, capacity 35',
		speed,
		['run', 22.4, 0],
		94.5,
		1e-9,
		'acsmMetabolic',
		'computed'
	),
	published(
		'reserve at a natural walk',
		reservePercentAt,
		['walk', 110, 35],
		34.92,
		halfDigit(2),
		'acsmMetabolic',
		'computed'
	),
	published(
		'reserve at a natural run',
		reservePercentAt,
		['run', 114, 35],
		72.38,
		halfDigit(2),
		'acsmMetabolic',
		'computed'
	),
	published(
		'moderate is faster than an unfit beginner walks',
		speedForReserve,
		[{ gait: 'walk', lowFraction: 0.4, highFraction: 0.6, capacity: unfit, grade: 0 }],
		{ kind: 'too-fast-to-walk' },
		0,
		'acsmMetabolic',
		'computed'
	),
	published(
		'moderate is at most a very slow run for an unfit beginner',
		speedForReserve,
		[{ gait: 'run', lowFraction: 0.4, highFraction: 0.6, capacity: unfit, grade: 0 }],
		{ kind: 'range', lowMetresPerMinute: 83.3333, highMetresPerMinute: 94.5 },
		1e-4,
		'acsmMetabolic',
		'computed'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[uptakeAtMilesPerHour, { formula: 'uptake', unit: 'ml-kg-min' }],
	[uptake, { formula: 'uptake', unit: 'ml-kg-min' }],
	[mets, { formula: 'uptake', unit: 'mets' }],
	[levelRunAtEightMets, { formula: 'uptake', unit: 'pace' }],
	[speed, { formula: 'uptake', unit: 'm-min' }],
	[kmPerHourForUptake, { formula: 'uptake', unit: 'km-h' }],
	[paceForUptake, { formula: 'uptake', unit: 'pace' }],
	[levelEqual, { formula: 'uptake', unit: 'm-min' }],
	[uptakeAtReserve, { formula: 'uptakeReserve', unit: 'ml-kg-min' }],
	[reservePercentAt, { formula: 'uptakeReserve', unit: 'percent' }],
	[speedForReserve, { formula: 'speed', unit: 'm-min' }]
]);
