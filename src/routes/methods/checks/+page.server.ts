import { formulaIds, type FormulaId } from '$lib/physiology/formulas.ts';
import { agreements } from '$lib/published/agreement.ts';
import { everyValue } from '$lib/published/every-value.ts';
import { sourceName } from '../source-name.ts';
import type { PageServerLoad } from './$types';

/** Worked out when it is asked for, from the values that the tests use. */
export const load: PageServerLoad = () => {
	const rows = agreements(everyValue);
	const countOf = (...tags: readonly string[]) =>
		everyValue.filter(({ tag }) => tags.includes(tag)).length;
	const about = (formula: FormulaId) => ({
		formula,
		rows: rows
			.filter((row) => row.formula === formula)
			.map((row) => ({ ...row, source: sourceName(row.source) }))
	});
	return {
		values: everyValue.length,
		sources: new Set(everyValue.map(({ source }) => source)).size,
		seen: countOf('seen'),
		computed: countOf('computed'),
		memory: countOf('memory', 'secondary'),
		beyond: rows.filter(({ difference, allowed }) => difference > allowed).length,
		groups: formulaIds.map(about).filter(({ rows: found }) => found.length > 0),
		unchecked: formulaIds.filter((id) => about(id).rows.length === 0)
	};
};
