import { measuredCapacity, type CapacityAnswer } from '../physiology/capacity.ts';
import { mileWalk } from '../physiology/mile-walk.ts';
import { jacksonCapacity } from '../physiology/questions-capacity.ts';
import { kilogramsFromPounds } from '../physiology/units.ts';
import { walkCheck } from '../physiology/walk-check.ts';
import {
	halfDigit,
	published,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

type Sex = 'female' | 'male';

function uptakeOf(answer: CapacityAnswer): number | string {
	return answer.kind === 'capacity' ? answer.capacity.mlPerKgPerMinute : answer.reasons[0]!.code;
}

function fromQuestions(sex: Sex, ageYears: number, bodyMassIndex: number, activityLevel: number) {
	return uptakeOf(jacksonCapacity({ sex, ageYears, bodyMassIndex, activityLevel }));
}

function fromMile(sex: Sex, ageYears: number, pounds: number, minutes: number, pulseBpm: number) {
	const weightKilograms = kilogramsFromPounds(pounds);
	return uptakeOf(mileWalk({ sex, ageYears, weightKilograms, minutes, pulseBpm }));
}

/** Litres a minute by the per-kilogram form, to set beside the form in litres. */
function litresFromMile(...walk: Parameters<typeof fromMile>) {
	const perKilogram = fromMile(...walk);
	return typeof perKilogram === 'number'
		? (perKilogram * kilogramsFromPounds(walk[2])) / 1000
		: perKilogram;
}

/** Three level walks of 4.8, 5.6 and 6.4 km/h, as ACSM converts 3, 3.5 and 4 mph. */
const threeWalks = [
	{ speedMetresPerMinute: 80.4, grade: 0, pulseBpm: 98 },
	{ speedMetresPerMinute: 93.8, grade: 0, pulseBpm: 106 },
	{ speedMetresPerMinute: 107.2, grade: 0, pulseBpm: 115 }
];

function fromWalks(maximumBpm: number) {
	return uptakeOf(walkCheck(threeWalks, { bpm: maximumBpm, spreadBpm: 11.4 }));
}

function uptakePerTenBeats() {
	return Number(fromWalks(190)) - Number(fromWalks(180));
}

function measuredSpreadPercent(mlPerKgPerMinute: number) {
	const answer = measuredCapacity(mlPerKgPerMinute);
	return answer.kind === 'capacity' ? (100 * answer.capacity.spread) / mlPerKgPerMinute : null;
}

function questionsSpread() {
	const answer = jacksonCapacity({
		sex: 'male',
		ageYears: 40,
		bodyMassIndex: 27,
		activityLevel: 2
	});
	return answer.kind === 'capacity' ? answer.capacity.spread : null;
}

const questions = 'capacity from questions';
const mile = 'capacity from a fast mile';
const walks = 'capacity from three walks';

export const rows: readonly PublishedValue[] = [
	published(
		questions,
		fromQuestions,
		['female', 40, 27, 2],
		24.607,
		halfDigit(3),
		'jackson1990',
		'computed'
	),
	published(
		questions,
		fromQuestions,
		['male', 40, 27, 2],
		35.594,
		halfDigit(3),
		'jackson1990',
		'computed'
	),
	published(
		questions,
		fromQuestions,
		['female', 55, 30, 0],
		12.788,
		halfDigit(3),
		'jackson1990',
		'computed'
	),
	published(
		questions,
		fromQuestions,
		['male', 30, 24, 5],
		47.429,
		halfDigit(3),
		'jackson1990',
		'computed'
	),
	published('error of four questions', questionsSpread, [], 5.7, 0, 'jackson1990', 'seen'),
	published(
		mile,
		fromMile,
		['male', 35, 170, 14, 120],
		48.0369,
		halfDigit(4),
		'kline1987',
		'computed'
	),
	published(
		mile,
		fromMile,
		['female', 45, 150, 16.5, 140],
		28.0907,
		halfDigit(4),
		'kline1987',
		'computed'
	),
	published(
		mile,
		fromMile,
		['female', 52, 130, 12.75, 147],
		38.0626,
		halfDigit(4),
		'kline1987',
		'computed'
	),
	// The two forms of the paper are separate regressions; this person's differ by a third of a per cent.
	published(
		'the form in litres',
		litresFromMile,
		['male', 35, 170, 14, 120],
		3.6922,
		0.02,
		'kline1987',
		'computed'
	),
	// A public answer gives 57.234 here, by entering the beats of ten seconds.
	published(
		'beats of ten seconds',
		fromMile,
		['female', 52, 130, 12.75, 24.5],
		'pulse-for-a-full-minute',
		0,
		'kline1987',
		'computed'
	),
	published(
		'younger than the people of the study',
		fromMile,
		['female', 29, 130, 12.75, 147],
		'outside-study',
		0,
		'kline1987',
		'seen'
	),
	published(
		'older than the people of the study',
		fromMile,
		['female', 70, 130, 12.75, 147],
		'outside-study',
		0,
		'kline1987',
		'seen'
	),
	published(walks, fromWalks, [170], 22.905, halfDigit(3), 'submaximalTextbooks', 'computed'),
	published(walks, fromWalks, [180], 24.48, halfDigit(3), 'submaximalTextbooks', 'computed'),
	published(walks, fromWalks, [190], 26.055, halfDigit(3), 'submaximalTextbooks', 'computed'),
	published(
		'what ten beats of maximum are worth',
		uptakePerTenBeats,
		[],
		1.57465,
		halfDigit(5),
		'submaximalTextbooks',
		'computed'
	),
	published(
		'error of a measured capacity, per cent',
		measuredSpreadPercent,
		[35],
		5.6,
		1e-9,
		'katch1982',
		'seen'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[fromQuestions, { formula: 'capacityFromQuestions', unit: 'ml-kg-min' }],
	[questionsSpread, { formula: 'capacityFromQuestions', unit: 'ml-kg-min' }],
	[fromMile, { formula: 'mileWalk', unit: 'ml-kg-min' }],
	[litresFromMile, { formula: 'mileWalk', unit: 'litres' }],
	[fromWalks, { formula: 'walkCheck', unit: 'ml-kg-min' }],
	[uptakePerTenBeats, { formula: 'walkCheck', unit: 'ml-kg-min' }],
	[measuredSpreadPercent, { formula: 'capacityMeasured', unit: 'percent' }]
]);
