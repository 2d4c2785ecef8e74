import type { AmountUnit, FormulaId } from '../physiology/formulas.ts';
import type { Seen, SourceId } from '../physiology/sources.ts';

/**
 * How a check value came about. seen, secondary and memory: it is printed in the source, and known
 * from a copy of it, from another publication, or by heart. computed: worked out outside this code
 * from the equation of the source.
 */
export type Tag = Seen | 'computed';

/** What a function answers, as plain data. Numbers in it are compared within the tolerance. */
export type Value = number | string | boolean | null | { readonly [key: string]: Value };

/** One published value: data but for the function that must give it. */
export interface PublishedValue {
	/** What the value is, in words. */
	readonly name: string;
	readonly fn: (...inputs: never[]) => unknown;
	readonly inputs: readonly unknown[];
	readonly value: Value;
	/** Largest absolute difference that is allowed: half of the last digit that the source prints. */
	readonly tolerance: number;
	readonly source: SourceId;
	readonly tag: Tag;
}

/** The formula that a value checks, and what it is counted in. */
export interface Subject {
	readonly formula: FormulaId;
	readonly unit: AmountUnit;
}

/** By the functions of the rows: some stand for a formula with its input in other units. */
export type Subjects = ReadonlyMap<unknown, Subject>;

/** A row whose inputs are checked against the function's own types. */
export function published<Inputs extends readonly unknown[]>(
	name: string,
	fn: (...inputs: Inputs) => unknown,
	inputs: Inputs,
	value: Value,
	tolerance: number,
	source: SourceId,
	tag: Tag
): PublishedValue {
	return { name, fn, inputs, value, tolerance, source, tag };
}

/** Half of the last digit that a value of so many decimals was printed with. */
export function halfDigit(decimals: number): number {
	return 0.5 * 10 ** -decimals + 1e-12;
}
