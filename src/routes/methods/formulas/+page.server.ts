import { learnedFormulas } from '$lib/guidance/learned-formulas.ts';
import { formulas, formulaUses, type Formula } from '$lib/physiology/formulas.ts';
import { limits, type Limit } from '$lib/physiology/limits.ts';
import { everyValue } from '$lib/published/every-value.ts';
import { formulaWords, learnedWords } from '$words/methods-formulas.ts';
import { sourceName } from '../source-name.ts';
import type { PageServerLoad } from './$types';

const words = { ...formulaWords, ...learnedWords };
const all: Readonly<Record<keyof typeof words, Formula>> = { ...formulas, ...learnedFormulas };
const ids = Object.keys(all) as readonly (keyof typeof words)[];

/** One record a formula, out of the data that the code and its tests use. */
export const load: PageServerLoad = () => ({
	groups: formulaUses.map((use) => ({
		use,
		formulas: ids
			.filter((id) => all[id].use === use)
			.map((id) => {
				const { sources, error, limits: names } = all[id];
				return {
					id,
					words: words[id],
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
