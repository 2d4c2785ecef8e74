import type { Ceiling, ClinicalStatus, Plan } from './types.ts';

/** The order of severity. Where several rules fire, the strictest decides. */
export const statusesMildestFirst: readonly ClinicalStatus[] = [
	'CLEARED_ALL',
	'CLEARED_WALK',
	'WAIT',
	'SEEK_ADVICE',
	'EMERGENCY'
];

export const ceilingsStrictestFirst: readonly Ceiling[] = ['none', 'moderate', 'vigorous'];

export const plansStrictestFirst: readonly Plan[] = ['walk', 'walkrun', 'hard'];

/**
 * @throws RangeError for a status that no rule can give
 * @example severityOf('CLEARED_ALL') // 0
 * @example severityOf('EMERGENCY') // 4
 */
export function severityOf(status: ClinicalStatus): number {
	return placeIn(statusesMildestFirst, status);
}

/** CLEARED_ALL where nothing says otherwise. */
export function strictestStatus(statuses: readonly ClinicalStatus[]): ClinicalStatus {
	return statuses.reduce<ClinicalStatus>(
		(worst, status) => (severityOf(status) > severityOf(worst) ? status : worst),
		'CLEARED_ALL'
	);
}

/** Vigorous where nothing says otherwise. */
export function strictestCeiling(ceilings: readonly Ceiling[]): Ceiling {
	return first(ceilingsStrictestFirst, ceilings) ?? 'vigorous';
}

export function strictestPlan(plan: Plan, others: readonly Plan[]): Plan {
	return first(plansStrictestFirst, [plan, ...others]) ?? plan;
}

/** How open a ceiling is: 0 for none, 2 for vigorous. */
export function opennessOf(ceiling: Ceiling): number {
	return placeIn(ceilingsStrictestFirst, ceiling);
}

function first<Value>(order: readonly Value[], values: readonly Value[]): Value | undefined {
	for (const value of values) placeIn(order, value);
	return order.find((candidate) => values.includes(candidate));
}

function placeIn<Value>(order: readonly Value[], value: Value): number {
	const place = order.indexOf(value);
	if (place < 0) throw new RangeError(`strictness requires a known value, not ${String(value)}`);
	return place;
}
