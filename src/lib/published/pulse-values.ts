import { countDelayError, SITTING_AFTER_EFFORT } from '../physiology/count-delay.ts';
import {
	beatsIn,
	countedAs,
	largestPulseCountSpread,
	pulseCountSpread,
	pulseCountStep,
	pulseFromCount
} from '../physiology/pulse-count.ts';
import { restingFromMornings } from '../physiology/resting.ts';
import {
	halfDigit,
	published,
	type PublishedValue,
	type Subject,
	type Subjects
} from './published-value.ts';

const athlete = { fromBpm: 147, towardsBpm: 89, timeConstantSeconds: 52.5 };
const alike = (mornings: number) => Array.from({ length: mornings }, () => 60);

function restingSpread(mornings: readonly number[]): number | undefined {
	const answer = restingFromMornings(mornings);
	return answer.kind === 'known' ? answer.resting.spreadBpm : undefined;
}

function restingMean(mornings: readonly number[]): number | undefined {
	const answer = restingFromMornings(mornings);
	return answer.kind === 'known' ? answer.resting.bpm : undefined;
}

/** Counting is arithmetic; the papers named say why it matters. */
export const rows: readonly PublishedValue[] = [
	published(
		'mean of three mornings',
		restingMean,
		[[66, 64, 70]],
		66.67,
		halfDigit(2),
		'reserveTeachingPage',
		'seen'
	),
	...(
		[
			[1, 3],
			[3, 1.732],
			[5, 1.342],
			[7, 1.134]
		] as const
	).map(([mornings, spread]) =>
		published(
			`spread of ${mornings} mornings`,
			restingSpread,
			[alike(mornings)],
			spread,
			halfDigit(3),
			'restingEcg2025',
			'computed'
		)
	),
	published('pulse from a count', pulseFromCount, [19, 15], 76, 0, 'deVan2005', 'computed'),
	published('pulse from a count', pulseFromCount, [37, 30], 74, 0, 'deVan2005', 'computed'),
	published('beats in a count', beatsIn, [15, 136], 34, 0, 'deVan2005', 'computed'),
	...(
		[
			[6, 10],
			[10, 6],
			[15, 4],
			[20, 3],
			[30, 2],
			[60, 1]
		] as const
	).map(([seconds, step]) =>
		published('worth of one beat', pulseCountStep, [seconds], step, 0, 'deVan2005', 'computed')
	),
	...(
		[
			[15, 2],
			[10, 3],
			[6, 5]
		] as const
	).map(([seconds, spread]) =>
		published(
			'largest spread of a count',
			largestPulseCountSpread,
			[seconds],
			spread,
			0,
			'deVan2005',
			'computed'
		)
	),
	...(
		[
			[15, 2],
			[10, 2.828],
			[6, 4.899],
			[30, 0]
		] as const
	).map(([seconds, spread]) =>
		published(
			'spread of a count of 74 bpm',
			pulseCountSpread,
			[seconds, 74],
			spread,
			halfDigit(3),
			'deVan2005',
			'computed'
		)
	),
	...(
		[
			[15, 74, 72, 76],
			[10, 74, 72, 78],
			[6, 74, 70, 80],
			[30, 74, 74, 74],
			[10, 130, 126, 132],
			[15, 130, 128, 132]
		] as const
	).map(([seconds, bpm, low, high]) =>
		published(
			'what a steady pulse is counted as',
			countedAs,
			[seconds, bpm],
			{ low, high },
			1e-9,
			'deVan2005',
			'computed'
		)
	),

	published(
		'athlete, counted at once',
		countDelayError,
		[athlete, 0, 15],
		-7.55,
		halfDigit(2),
		'barak2011',
		'computed'
	),
	published(
		'athlete, counted after 15 s',
		countDelayError,
		[athlete, 15, 15],
		-20.09,
		halfDigit(2),
		'barak2011',
		'computed'
	),
	...(
		[
			[0, 15, -5.922],
			[15, 15, -15.691],
			[5, 10, -7.832],
			[5, 15, -9.505],
			[5, 6, -6.412]
		] as const
	).map(([delay, count, error]) =>
		published(
			'sedentary student after a delay',
			countDelayError,
			[SITTING_AFTER_EFFORT, delay, count],
			error,
			halfDigit(3),
			'barak2011',
			'computed'
		)
	),
	// The measured shortfalls: 7 to 9 beats in the first 15 s, 20 to 27 with a wait before the count.
	published(
		'measured in the first 15 s',
		countDelayError,
		[athlete, 0, 15],
		-8,
		1,
		'deVan2005',
		'seen'
	),
	published('measured by hand', countDelayError, [athlete, 15, 15], -23.5, 3.5, 'deVan2005', 'seen')
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[restingMean, { formula: 'resting', unit: 'bpm' }],
	[restingSpread, { formula: 'resting', unit: 'bpm' }],
	[pulseFromCount, { formula: 'pulseCount', unit: 'bpm' }],
	[beatsIn, { formula: 'pulseCount', unit: 'beats' }],
	[pulseCountStep, { formula: 'pulseCount', unit: 'bpm' }],
	[largestPulseCountSpread, { formula: 'pulseCount', unit: 'bpm' }],
	[pulseCountSpread, { formula: 'pulseCount', unit: 'bpm' }],
	[countedAs, { formula: 'pulseCount', unit: 'bpm' }],
	[countDelayError, { formula: 'countDelay', unit: 'bpm' }]
]);
