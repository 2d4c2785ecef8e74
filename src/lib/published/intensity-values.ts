import { uptakePercentAt } from '../physiology/intensity-by-capacity.ts';
import { intensityOf, type Intensity, type IntensityAxis } from '../physiology/intensity.ts';
import { intensityOfMetsAtAge } from '../physiology/mets-by-age.ts';
import {
	published,
	type PublishedValue,
	type Subject,
	type Subjects,
	type Tag
} from './published-value.ts';
import type { SourceId } from '../physiology/sources.ts';

const classes: readonly [IntensityAxis, Tag, SourceId, readonly [number, Intensity][]][] = [
	[
		'reservePercent',
		'seen',
		'garber2011',
		[
			[29.99, 'very-light'],
			[30, 'light'],
			[39.99, 'light'],
			[40, 'moderate'],
			[59, 'moderate'],
			[59.5, 'moderate'],
			[60, 'vigorous'],
			[89.99, 'vigorous'],
			[90, 'near-maximal']
		]
	],
	[
		'maximumPercent',
		'seen',
		'garber2011',
		[
			[56, 'very-light'],
			[57, 'light'],
			[63.5, 'light'],
			[64, 'moderate'],
			[76.1, 'moderate'],
			[77, 'vigorous'],
			[95.5, 'vigorous'],
			[96, 'near-maximal']
		]
	],
	[
		'uptakePercent',
		'seen',
		'garber2011',
		[
			[36, 'very-light'],
			[37, 'light'],
			[46, 'moderate'],
			[63, 'moderate'],
			[64, 'vigorous'],
			[90, 'vigorous'],
			[91, 'near-maximal']
		]
	],
	[
		'perceived',
		'seen',
		'garber2011',
		[
			[8, 'very-light'],
			[9, 'light'],
			[11, 'light'],
			[12, 'moderate'],
			[13, 'moderate'],
			[14, 'vigorous'],
			[17, 'vigorous'],
			[18, 'near-maximal']
		]
	],
	[
		'mets',
		'seen',
		'kjfm2020',
		[
			[2.9, 'light'],
			[3, 'moderate'],
			[5.9, 'moderate'],
			[6, 'vigorous'],
			[8.8, 'near-maximal']
		]
	],
	[
		'effort',
		'seen',
		'pag2018',
		[
			[4, 'light'],
			[5, 'moderate'],
			[6, 'moderate'],
			[7, 'vigorous'],
			[8, 'vigorous']
		]
	]
];

const byCapacity: readonly [number, readonly [number, number][]][] = [
	[
		20,
		[
			[30, 33.5],
			[40, 43],
			[60, 62],
			[90, 90.5]
		]
	],
	[
		10,
		[
			[30, 37],
			[40, 46],
			[60, 64],
			[90, 91]
		]
	],
	[
		5,
		[
			[30, 44],
			[40, 52],
			[60, 68],
			[90, 92]
		]
	]
];

const byAge: readonly [number, readonly [number, Intensity][]][] = [
	[
		30,
		[
			[2.3, 'very-light'],
			[2.4, 'light'],
			[4.8, 'moderate'],
			[7.2, 'vigorous'],
			[10.2, 'near-maximal']
		]
	],
	[
		50,
		[
			[2, 'light'],
			[3.9, 'light'],
			[4, 'moderate'],
			[6, 'vigorous'],
			[8.5, 'near-maximal']
		]
	],
	[
		65,
		[
			[1.6, 'light'],
			[3.2, 'moderate'],
			[4.7, 'moderate'],
			[4.8, 'vigorous'],
			[6.8, 'near-maximal']
		]
	]
];

export const rows: readonly PublishedValue[] = [
	...classes.flatMap(([axis, tag, source, values]) =>
		values.map(([value, intensity]) =>
			published('class of intensity', intensityOf, [axis, value], intensity, 0, source, tag)
		)
	),
	...byCapacity.flatMap(([capacityMets, values]) =>
		values.map(([reservePercent, uptakePercent]) =>
			published(
				'per cent of highest uptake at a capacity',
				uptakePercentAt,
				[reservePercent, capacityMets],
				uptakePercent,
				1e-9,
				'garber2011',
				'computed'
			)
		)
	),
	...byAge.flatMap(([ageYears, values]) =>
		values.map(([mets, intensity]) =>
			published(
				'class of METs at an age',
				intensityOfMetsAtAge,
				[ageYears, mets],
				intensity,
				0,
				'garber2011',
				'memory'
			)
		)
	)
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[intensityOf, { formula: 'classes', unit: 'answer' }],
	[uptakePercentAt, { formula: 'uptakeByCapacity', unit: 'percent' }],
	[intensityOfMetsAtAge, { formula: 'metsByAge', unit: 'answer' }]
]);
