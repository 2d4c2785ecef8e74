import {
	foxMaximum,
	gellishCurvedMaximum,
	gellishMaximum,
	gellishRoundedMaximum,
	gulatiMaximum,
	nesMaximum
} from '../physiology/comparison-maximum.ts';
import { ageMaximum, tanakaMaximum } from '../physiology/maximum.ts';
import type { SourceId } from '../physiology/sources.ts';
import { published, type PublishedValue, type Subject, type Subjects } from './published-value.ts';

type Prediction = (ageYears: number) => number;

/** Worked out from each equation with another language, unrounded. */
const table: readonly [string, Prediction, SourceId, readonly [number, number][]][] = [
	[
		'maximum by 220 less age',
		foxMaximum,
		'fox1971',
		[
			[20, 200],
			[40, 180],
			[60, 160],
			[70, 150]
		]
	],
	[
		'maximum by Tanaka',
		tanakaMaximum,
		'tanaka2001',
		[
			[20, 194],
			[25, 190.5],
			[30, 187],
			[40, 180],
			[45, 176.5],
			[50, 173],
			[60, 166],
			[70, 159]
		]
	],
	[
		'maximum by Gellish',
		gellishMaximum,
		'jackson2007',
		[
			[20, 193.5],
			[40, 180.1],
			[45, 176.75],
			[60, 166.7]
		]
	],
	[
		'maximum by Gellish, rounded',
		gellishRoundedMaximum,
		'gellish2007',
		[
			[20, 193],
			[45, 175.5],
			[70, 158]
		]
	],
	[
		'maximum by Gellish, curved',
		gellishCurvedMaximum,
		'gellish2007',
		[
			[20, 188.7],
			[25, 187.125],
			[40, 180.3],
			[45, 177.325],
			[70, 157.2]
		]
	],
	[
		'maximum by Nes',
		nesMaximum,
		'nes2013',
		[
			[20, 198.2],
			[25, 195],
			[40, 185.4],
			[60, 172.6],
			[70, 166.2]
		]
	],
	[
		'maximum of women by Gulati',
		gulatiMaximum,
		'gulati2010',
		[
			[20, 188.4],
			[40, 170.8],
			[50, 162],
			[70, 144.4]
		]
	]
];

/** What each equation says at an age, and how wrong it is for one person. */
export const rows: readonly PublishedValue[] = [
	...table.flatMap(([name, fn, source, values]) =>
		values.map(([ageYears, bpm]) => published(name, fn, [ageYears], bpm, 1e-9, source, 'computed'))
	),
	published(
		'error of Tanaka in sedentary adults',
		ageMaximum,
		[40],
		{ spreadBpm: 11.4 },
		0,
		'sarzynski2013',
		'seen'
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[foxMaximum, { formula: 'maximumFox', unit: 'bpm' }],
	[tanakaMaximum, { formula: 'maximumByAge', unit: 'bpm' }],
	[ageMaximum, { formula: 'maximumByAge', unit: 'bpm' }],
	[gellishMaximum, { formula: 'maximumGellish', unit: 'bpm' }],
	[gellishRoundedMaximum, { formula: 'maximumGellish', unit: 'bpm' }],
	[gellishCurvedMaximum, { formula: 'maximumGellish', unit: 'bpm' }],
	[nesMaximum, { formula: 'maximumNes', unit: 'bpm' }],
	[gulatiMaximum, { formula: 'maximumGulati', unit: 'bpm' }]
]);
