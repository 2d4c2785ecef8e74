import type { Seen, SourceId } from './sources.ts';

/** The five classes of intensity, gentlest first. */
export const intensities = ['very-light', 'light', 'moderate', 'vigorous', 'near-maximal'] as const;

export type Intensity = (typeof intensities)[number];

/** Where light, moderate, vigorous and near-maximal begin. Each value belongs to the class above. */
export type CutPoints = readonly [
	light: number,
	moderate: number,
	vigorous: number,
	nearMaximal: number
];

export interface Axis {
	readonly cutPoints: CutPoints;
	readonly unit: string;
	readonly source: SourceId;
	readonly seen: Seen;
}

/**
 * Classes of intensity on each axis that effort is measured on: the table of the American College of
 * Sports Medicine (source garber2011), which prints whole numbers with gaps such as 40-59 and 60-89.
 * Here every class reaches up to where the next begins, so that 59.5 is moderate. The axes disagree
 * with each other for one person; a page names the one that it shows. Near-maximal begins at 96 % of
 * maximum: a copy that prints 95 overlaps its own vigorous row.
 *
 * The effort axis is the scale of pag2018: moderate 5 and 6, vigorous from 7. That light begins at 3
 * and near-maximal at 9 is our own choice.
 */
export const axes = {
	reservePercent: {
		cutPoints: [30, 40, 60, 90],
		unit: '% of heart-rate or uptake reserve',
		source: 'garber2011',
		seen: 'seen'
	},
	maximumPercent: {
		cutPoints: [57, 64, 77, 96],
		unit: '% of maximum pulse',
		source: 'garber2011',
		seen: 'seen'
	},
	uptakePercent: {
		cutPoints: [37, 46, 64, 91],
		unit: '% of highest uptake',
		source: 'garber2011',
		seen: 'seen'
	},
	mets: {
		cutPoints: [2, 3, 6, 8.8],
		unit: 'METs, whatever the age',
		source: 'garber2011',
		seen: 'secondary'
	},
	perceived: {
		cutPoints: [9, 12, 14, 18],
		unit: 'perceived exertion, 6 to 20',
		source: 'garber2011',
		seen: 'seen'
	},
	effort: {
		cutPoints: [3, 5, 7, 9],
		unit: 'effort, 0 to 10',
		source: 'pag2018',
		seen: 'seen'
	}
} as const satisfies Record<string, Axis>;

export type IntensityAxis = keyof typeof axes;
