import { describe, expect, test } from 'vitest';
import { DAY_SPREAD_BPM } from '$lib/guidance/ceiling/day-shift.ts';
import { COUNTS_FROM_SECONDS } from '$lib/guidance/ceiling/evidence.ts';
import { ANSWERS_NEEDED } from '$lib/guidance/ceiling/learned-ceiling.ts';
import { LAPSE } from '$lib/guidance/ceiling/outing-likelihood.ts';
import { PRIOR_SHARE } from '$lib/guidance/ceiling/prior.ts';
import { HALF_LIFE_DAYS } from '$lib/guidance/ceiling/talk-ceiling.ts';
import { learnedFormulas } from '$lib/guidance/learned-formulas.ts';
import { DAYS_NEEDED, OUTINGS_NEEDED } from '$lib/guidance/progress/change.ts';
import { formulaIds, formulas } from '$lib/physiology/formulas.ts';
import { SEDENTARY_TALKERS } from '$lib/physiology/talk-test.ts';
import { formulaWords, learnedWords } from '$words/methods-formulas.ts';

/*
 * Pages about methods are drawn from the data of the code. A sentence in words is typed, so each
 * number in it is held beside the code that it tells of.
 */

const files = import.meta.glob<string>('../../../src/lib/physiology/*.ts', {
	query: '?raw',
	import: 'default',
	eager: true
});
const guidance = Object.values(
	import.meta.glob<string>('../../../src/lib/guidance/{ceiling,progress}/*.ts', {
		query: '?raw',
		import: 'default',
		eager: true
	})
).join('\n');

const numbersIn = (text: string) =>
	(text.replace(/(?<=\d),(?=\d{3})/g, '').match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

/** Every number of the files in which a formula stands and of its tables, also as a share of a hundred. */
function known(code: readonly string[]): ReadonlySet<number> {
	const own = Object.values(files).filter((text) =>
		code.some((name) => new RegExp(`export (?:function|const) ${name}\\b`).test(text))
	);
	const tables = own.flatMap((text) =>
		[...text.matchAll(/from '\.\/([a-z-]+-axes)\.ts'/g)].map(
			([, name]) => files[`../../../src/lib/physiology/${name}.ts`] ?? ''
		)
	);
	own.push(...tables);
	const plain = numbersIn(own.join('\n').replaceAll(/(?<=\d)_(?=\d)/g, ''));
	return new Set([...plain, ...plain.map((one) => Number((100 * one).toFixed(6)))]);
}

describe('the sum of each formula has no number that its code does not have', () => {
	test.each(formulaIds)('%s', (id) => {
		const all = known(formulas[id].code);
		const { sum, people } = formulaWords[id];
		expect(numbersIn(`${sum} ${people}`).filter((one) => !all.has(one))).toEqual([]);
	});
});

describe('what is learned from outings', () => {
	test.each(Object.entries(learnedFormulas))('%s names functions that are there', (_, { code }) => {
		for (const name of code) {
			expect(guidance).toMatch(new RegExp(`export (?:function|const) ${name}\\b`));
		}
	});

	test('the talking pulse is told with the numbers of its code', () => {
		const { sum, people, holds } = learnedWords.talkCeiling;
		expect(numbersIn(sum)).toEqual([
			Math.round(100 * PRIOR_SHARE.mean),
			Math.round(100 * PRIOR_SHARE.spread),
			DAY_SPREAD_BPM,
			100 * LAPSE,
			100,
			HALF_LIFE_DAYS
		]);
		expect(numbersIn(people)).toEqual([SEDENTARY_TALKERS]);
		expect(numbersIn(holds)).toEqual([ANSWERS_NEEDED]);
		expect(COUNTS_FROM_SECONDS / 60, 'two minutes or more').toBe(2);
	});

	test('the trend is told with the numbers of its code', () => {
		expect(numbersIn(learnedWords.trend.holds)).toEqual([DAYS_NEEDED]);
		expect(OUTINGS_NEEDED, 'five outings or more').toBe(5);
	});
});
