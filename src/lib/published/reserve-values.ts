import { percentAlong } from '../physiology/reserve-relations.ts';
import {
	chanceOfAtLeast,
	reserveFractionAtMaximumFraction,
	reserveFractionOf,
	targetAtFraction
} from '../physiology/reserve.ts';
import {
	published,
	halfDigit,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

const known = (bpm: number, spreadBpm = 0) => ({ bpm, spreadBpm });

/** The target alone, for worked examples that know no spread. */
function targetBpm(fraction: number, restingBpm: number, maximumBpm: number): number {
	return targetAtFraction(fraction, known(restingBpm), known(maximumBpm)).bpm;
}

/** Edge of the interval that holds the true target 19 times in 20. */
function targetEdge(
	side: -1 | 1,
	fraction: number,
	resting: { bpm: number; spreadBpm: number },
	maximum: { bpm: number; spreadBpm: number }
): number {
	const { bpm, spreadBpm } = targetAtFraction(fraction, resting, maximum);
	return bpm + side * 1.959964 * spreadBpm;
}

const resting = 'target pulse at a fraction of reserve';
const spread = 'target with the spread of both ends';
const misjudged = 'true fraction at 136 bpm when the maximum is not the predicted 180';
const relation = 'one percentage from another';

export const rows: readonly PublishedValue[] = [
	published(resting, targetBpm, [0.6, 75, 200], 150, 0, 'austinWorksheet', 'seen'),
	published(resting, targetBpm, [0.8, 75, 200], 175, 0, 'austinWorksheet', 'computed'),
	published(resting, targetBpm, [0.7, 60, 180], 144, 1e-9, 'reserveTeachingPage', 'seen'),
	published(resting, targetBpm, [0.5, 67, 199], 133, 1e-9, 'reserveTeachingPage', 'seen'),
	published(resting, targetBpm, [0.6, 67, 199], 146.2, 1e-9, 'reserveTeachingPage', 'seen'),
	published(resting, targetBpm, [0.7, 67, 199], 159.4, 1e-9, 'reserveTeachingPage', 'seen'),
	published(resting, targetBpm, [0.85, 67, 199], 179.2, 1e-9, 'reserveTeachingPage', 'seen'),
	published(resting, targetBpm, [0.4, 60, 180], 108, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.5, 60, 180], 120, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.6, 60, 180], 132, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.8, 60, 180], 156, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.85, 60, 180], 162, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.75, 50, 180], 147.5, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.4, 72, 173], 112.4, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.6, 72, 173], 132.6, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.89, 72, 173], 161.89, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.3, 62, 187], 99.5, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.4, 62, 187], 112, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.6, 62, 187], 137, 1e-9, 'karvonen1957', 'computed'),
	published(resting, targetBpm, [0.75, 62, 187], 155.75, 1e-9, 'karvonen1957', 'computed'),

	...(
		[
			[0.4, known(70, 3), known(180, 10), 114, 4.3863],
			[0.59, known(70, 3), known(180, 10), 134.9, 6.0268],
			[0.6, known(70, 3), known(180, 10), 136, 6.1188],
			[0.6, known(70, 3), known(180, 10.8), 136, 6.5902],
			[0.4, known(70, 3), known(180, 11.4), 114, 4.9024],
			[0.6, known(70, 3), known(180, 11.4), 136, 6.9445],
			[0.6, known(70), known(180, 10), 136, 6],
			[0.6, known(70, 3), known(180, 2), 136, 1.6971]
		] as const
	).map(([fraction, rest, maximum, bpm, spreadBpm]) =>
		published(
			spread,
			targetAtFraction,
			[fraction, rest, maximum],
			{ bpm, spreadBpm },
			halfDigit(4),
			'karvonen1957',
			'computed'
		)
	),
	published(
		'lower edge of 19 in 20',
		targetEdge,
		[-1, 0.4, known(70, 3), known(180, 10)],
		105.4,
		halfDigit(2),
		'karvonen1957',
		'computed'
	),
	published(
		'upper edge of 19 in 20',
		targetEdge,
		[1, 0.6, known(70, 3), known(180, 10)],
		147.99,
		halfDigit(2),
		'karvonen1957',
		'computed'
	),
	published(
		'upper edge of 19 in 20',
		targetEdge,
		[1, 0.6, known(70, 3), known(180, 2)],
		139.33,
		halfDigit(2),
		'karvonen1957',
		'computed'
	),

	...(
		[
			[160, 0.7333],
			[170, 0.66],
			[180, 0.6],
			[190, 0.55],
			[200, 0.5077]
		] as const
	).map(([maximumBpm, fraction]) =>
		published(
			misjudged,
			reserveFractionOf,
			[136, 70, maximumBpm],
			fraction,
			halfDigit(4),
			'karvonen1957',
			'computed'
		)
	),
	published(
		'chance of vigorous at 130 bpm',
		chanceOfAtLeast,
		[0.6, 130, known(70), known(180, 10)],
		0.158655,
		halfDigit(6),
		'karvonen1957',
		'computed'
	),
	published(
		'fraction at 137 bpm',
		reserveFractionOf,
		[137, 70, 180],
		0.609,
		halfDigit(3),
		'karvonen1957',
		'computed'
	),

	// Sedentary adults still talked comfortably at 73 % of maximum: with 70 bpm at rest and a maximum
	// by age that is 53 to 58 % of reserve from 60 down to 20 years.
	...(
		[
			[194, 0.5776],
			[180, 0.5582],
			[166, 0.5331]
		] as const
	).map(([maximumBpm, fraction]) =>
		published(
			'fraction of reserve at 73 % of maximum',
			reserveFractionAtMaximumFraction,
			[0.73, 70, maximumBpm],
			fraction,
			halfDigit(4),
			'foster2009',
			'computed'
		)
	),

	published(relation, percentAlong, ['treadmillReserve', 40], 42.7, 1e-9, 'swain1998', 'computed'),
	published(relation, percentAlong, ['treadmillReserve', 60], 63.3, 1e-9, 'swain1998', 'computed'),
	published(relation, percentAlong, ['treadmillReserve', 80], 83.9, 1e-9, 'swain1998', 'computed'),
	published(relation, percentAlong, ['cycleUptake', 40], 33.2, 1e-9, 'swain1997', 'computed'),
	published(relation, percentAlong, ['cycleUptake', 60], 55.6, 1e-9, 'swain1997', 'computed'),
	published(relation, percentAlong, ['cycleUptake', 80], 78, 1e-9, 'swain1997', 'computed'),
	...(
		[
			[40, 62.6],
			[46, 66.44],
			[60, 75.4],
			[64, 77.96],
			[80, 88.2],
			[85, 91.4],
			[91, 95.24]
		] as const
	).map(([uptake, maximum]) =>
		published(
			relation,
			percentAlong,
			['treadmillMaximum', uptake],
			maximum,
			1e-9,
			'swain1994',
			'computed'
		)
	),
	// The study's own means, which its line is drawn through: within one point, as it says.
	published("the study's mean", percentAlong, ['treadmillMaximum', 40], 63, 1, 'swain1994', 'seen'),
	published("the study's mean", percentAlong, ['treadmillMaximum', 60], 76, 1, 'swain1994', 'seen'),
	published("the study's mean", percentAlong, ['treadmillMaximum', 80], 89, 1, 'swain1994', 'seen'),
	published("the study's mean", percentAlong, ['treadmillMaximum', 85], 92, 1, 'swain1994', 'seen'),
	// Two more groups and machines, and a line worked out from the data of 23 more people.
	published(
		'line on a cycle',
		percentAlong,
		['cycleReserve', 60],
		59.9,
		1e-9,
		'swain1997',
		'computed'
	),
	published(
		'line on an elliptical machine',
		percentAlong,
		['ellipticalReserve', 60],
		60.9,
		1e-9,
		'dalleck2006',
		'computed'
	),
	published(
		'mean line of 23 adults on a cycle, near the treadmill line',
		percentAlong,
		['treadmillReserve', 60],
		62.15,
		2,
		'astrand1964',
		'computed'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[targetBpm, { formula: 'reserve', unit: 'bpm' }],
	[targetAtFraction, { formula: 'reserve', unit: 'bpm' }],
	[targetEdge, { formula: 'reserve', unit: 'bpm' }],
	[reserveFractionOf, { formula: 'reserve', unit: 'share' }],
	[chanceOfAtLeast, { formula: 'reserve', unit: 'share' }],
	[reserveFractionAtMaximumFraction, { formula: 'reserve', unit: 'share' }],
	[percentAlong, { formula: 'reserveRelations', unit: 'points' }]
]);
