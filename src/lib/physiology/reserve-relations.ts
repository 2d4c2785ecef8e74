import type { SourceId } from './sources.ts';

/** A straight line that a study found between two percentages. */
export interface Relation {
	/** Percentage that goes in and comes out. */
	readonly from: 'uptake-reserve' | 'uptake';
	readonly to: 'pulse-reserve' | 'pulse-maximum';
	readonly mode: 'cycle' | 'treadmill' | 'elliptical';
	readonly intercept: number;
	readonly slope: number;
	/** Standard errors of the group's mean line, where printed. One person's line is far looser. */
	readonly interceptError: number | null;
	readonly slopeError: number | null;
	readonly people: number;
	readonly source: SourceId;
}

/**
 * What is known of how pulse follows oxygen uptake. On every machine per cent of heart-rate reserve
 * goes with per cent of uptake reserve nearly one to one, which is why the product takes the two as
 * the same. All people were healthy; none took medicines that slow the heart.
 */
export const relations = {
	cycleReserve: {
		from: 'uptake-reserve',
		to: 'pulse-reserve',
		mode: 'cycle',
		intercept: -0.1,
		slope: 1,
		interceptError: 0.6,
		slopeError: 0.01,
		people: 63,
		source: 'swain1997'
	},
	cycleUptake: {
		from: 'uptake',
		to: 'pulse-reserve',
		mode: 'cycle',
		intercept: -11.6,
		slope: 1.12,
		interceptError: 1,
		slopeError: 0.01,
		people: 63,
		source: 'swain1997'
	},
	treadmillReserve: {
		from: 'uptake-reserve',
		to: 'pulse-reserve',
		mode: 'treadmill',
		intercept: 1.5,
		slope: 1.03,
		interceptError: 0.6,
		slopeError: 0.01,
		people: 50,
		source: 'swain1998'
	},
	treadmillUptake: {
		from: 'uptake',
		to: 'pulse-reserve',
		mode: 'treadmill',
		intercept: -6.1,
		slope: 1.1,
		interceptError: 0.7,
		slopeError: 0.01,
		people: 50,
		source: 'swain1998'
	},
	ellipticalReserve: {
		from: 'uptake-reserve',
		to: 'pulse-reserve',
		mode: 'elliptical',
		intercept: 0.3,
		slope: 1.01,
		interceptError: null,
		slopeError: null,
		people: 48,
		source: 'dalleck2006'
	},
	/** The line itself is from memory; the study's own means lie within one point of it. */
	treadmillMaximum: {
		from: 'uptake',
		to: 'pulse-maximum',
		mode: 'treadmill',
		intercept: 37,
		slope: 0.64,
		interceptError: null,
		slopeError: null,
		people: 162,
		source: 'swain1994'
	}
} as const satisfies Record<string, Relation>;

export type RelationName = keyof typeof relations;

/**
 * The percentage that a relation gives: intercept plus slope times the percentage that goes in.
 * Source, people and machine stand with each relation. Typical error of one person: 5 points.
 *
 * @param percent 0 to 100
 * @throws RangeError outside 0 to 100
 * @example percentAlong('treadmillReserve', 60) // 63.3
 * @example percentAlong('cycleUptake', 60) // 55.6
 */
export function percentAlong(name: RelationName, percent: number): number {
	if (!(percent >= 0 && percent <= 100)) {
		throw new RangeError('percentAlong requires a percentage from 0 to 100');
	}
	const { intercept, slope } = relations[name];
	return intercept + slope * percent;
}
