import {
	categoryRatioFromPerceived,
	perceivedFromCategoryRatio
} from '../physiology/perceived-exertion.ts';
import { countingShare, countsToAimAt, sedentaryTalkStages } from '../physiology/talk-test.ts';
import {
	halfDigit,
	published,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

/** One mean of the three steady bouts, by number of bout, easiest first. */
function sedentaryMean(
	bout: 0 | 1 | 2,
	measure: 'pulseBpm' | 'maximumPercent' | 'categoryRatio' | 'talkScore'
) {
	return sedentaryTalkStages[bout]?.[measure].mean;
}

const toPerceived: readonly [number, number][] = [
	[0.5, 6.785],
	[1, 8.112],
	[2, 10.258],
	[3, 12.137],
	[4, 13.871],
	[5, 15.509],
	[6, 17.074],
	[7, 18.582],
	[7.97, 20],
	[8, 20],
	[10, 20]
];
const toCategoryRatio: readonly [number, number][] = [
	[7, 0.572],
	[9, 1.391],
	[10, 1.871],
	[11, 2.383],
	[12, 2.924],
	[13, 3.489],
	[14, 4.077],
	[15, 4.684],
	[16, 5.31],
	[17, 5.952],
	[18, 6.61],
	[20, 7.97]
];

export const rows: readonly PublishedValue[] = [
	...toPerceived.map(([ratio, perceived]) =>
		published(
			'6-20 from category ratio',
			perceivedFromCategoryRatio,
			[ratio],
			perceived,
			halfDigit(3),
			'borgE2001',
			'computed'
		)
	),
	...toCategoryRatio.map(([perceived, ratio]) =>
		published(
			'category ratio from 6-20',
			categoryRatioFromPerceived,
			[perceived],
			ratio,
			halfDigit(3),
			'borgE2001',
			'computed'
		)
	),
	published('count 9 of 20', countingShare, [9, 20], 0.45, 1e-9, 'norman2001', 'computed'),
	published(
		'counts to aim at',
		countsToAimAt,
		[20],
		{ low: 8, high: 10 },
		1e-9,
		'loose2012',
		'computed'
	),
	published(
		'counts to aim at',
		countsToAimAt,
		[30],
		{ low: 9, high: 12 },
		1e-9,
		'loose2012',
		'computed'
	),
	published(
		'pulse at the stage before the last comfortable',
		sedentaryMean,
		[0, 'pulseBpm'],
		140,
		0,
		'foster2009',
		'seen'
	),
	published(
		'per cent of maximum there',
		sedentaryMean,
		[0, 'maximumPercent'],
		73,
		0,
		'foster2009',
		'seen'
	),
	published(
		'per cent of maximum at the last comfortable',
		sedentaryMean,
		[1, 'maximumPercent'],
		79,
		0,
		'foster2009',
		'seen'
	),
	published(
		'per cent of maximum at the first unsure',
		sedentaryMean,
		[2, 'maximumPercent'],
		82,
		0,
		'foster2009',
		'seen'
	),
	published(
		'rated effort at the last comfortable',
		sedentaryMean,
		[1, 'categoryRatio'],
		4.4,
		0,
		'foster2009',
		'seen'
	),
	published(
		'talk score at the first unsure',
		sedentaryMean,
		[2, 'talkScore'],
		2.6,
		0,
		'foster2009',
		'seen'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[perceivedFromCategoryRatio, { formula: 'ratings', unit: 'rating' }],
	[categoryRatioFromPerceived, { formula: 'ratings', unit: 'rating' }],
	[countingShare, { formula: 'oneBreath', unit: 'share' }],
	[countsToAimAt, { formula: 'oneBreath', unit: 'counts' }],
	[sedentaryMean, { formula: 'talk', unit: 'answer' }]
]);
