import { formulaIds, formulas, formulaUses, type Formula } from '$lib/physiology/formulas.ts';
import { limits, type Limit } from '$lib/physiology/limits.ts';
import { everyValue } from '$lib/published/every-value.ts';
import { sourceName } from '../source-name.ts';
import type { PageServerLoad } from './$types';

/** One record a formula, out of the data that the code and its tests use. */
export const load: PageServerLoad = () => ({
	groups: formulaUses.map((use) => ({
		use,
		formulas: formulaIds
			.filter((id) => formulas[id].use === use)
			.map((id) => {
				const { sources, error, limits: names }: Formula = formulas[id];
				return {
					id,
					error,
					sources: sources.map(sourceName),
					checks: everyValue.filter(({ formula }) => formula === id).length,
					ranges: names.map((name) => {
						const { valid, plausible }: Limit = limits[name];
						const { low, high } = valid ?? plausible;
						return { name, low, high };
					})
				};
			})
	}))
});
