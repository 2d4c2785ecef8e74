import { formulaIds, type AmountUnit, type FormulaId } from '../physiology/formulas.ts';
import type { SourceId } from '../physiology/sources.ts';
import { differenceFrom } from './difference.ts';
import type { SubjectValue } from './every-value.ts';
import type { Tag } from './published-value.ts';

/** How far the code agrees with the values of one source about one formula. */
export interface Agreement {
	readonly formula: FormulaId;
	readonly source: SourceId;
	readonly tag: Tag;
	readonly unit: AmountUnit;
	/** How many values. */
	readonly count: number;
	/** Of the value that comes nearest to what is allowed, or goes furthest over it. */
	readonly difference: number;
	readonly allowed: number;
}

/** Less than this is what a computer leaves over when it adds, not a difference. */
const NOISE = 1e-9;

/** Worked out anew from the values and the code, in the order of the formulas. */
export function agreements(values: readonly SubjectValue[]): Agreement[] {
	const groups = Map.groupBy(values, ({ formula, source, tag, unit }) =>
		[formula, source, tag, unit].join(' ')
	);
	return [...groups.values()]
		.map(agreementOf)
		.sort((one, other) => formulaIds.indexOf(one.formula) - formulaIds.indexOf(other.formula));
}

function agreementOf(values: readonly SubjectValue[]): Agreement {
	const compared = values.map((row) => {
		const difference = differenceFrom(row.fn(...(row.inputs as never[])), row.value);
		return { row, difference: difference < NOISE ? 0 : difference };
	});
	const nearest = compared.reduce((worst, one) =>
		share(one.difference, one.row) > share(worst.difference, worst.row) ? one : worst
	);
	const { formula, source, tag, unit, tolerance } = nearest.row;
	const count = values.length;
	const { difference } = nearest;
	return { formula, source, tag, unit, count, difference, allowed: tolerance };
}

/** How much of the allowed difference is used up. */
function share(difference: number, { tolerance }: SubjectValue): number {
	return difference / Math.max(tolerance, NOISE);
}
