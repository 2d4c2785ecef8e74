import { describe, expect, it } from 'vitest';
import { sources } from '../../src/lib/physiology/sources.ts';
import { agreements } from '../../src/lib/published/agreement.ts';
import { differenceFrom } from '../../src/lib/published/difference.ts';
import { everyValue } from '../../src/lib/published/every-value.ts';
import { published, type PublishedValue } from '../../src/lib/published/published-value.ts';

const modules = import.meta.glob<{ rows?: readonly PublishedValue[] }>(
	'../../src/lib/published/*-values.ts',
	{ eager: true }
);
const files = Object.entries(modules).map(([path, { rows }]) => ({ path, rows: rows ?? [] }));
const all = files.flatMap(({ rows }) => rows);

function titleOf({ name, fn, inputs, value, source, tag }: PublishedValue): string {
	const call = `${fn.name}(${inputs.map((input) => JSON.stringify(input)).join(', ')})`;
	const { authors, year } = sources[source];
	return `${name}: ${call} gives ${JSON.stringify(value)} (${authors.split(',')[0]} ${year ?? 'n.d.'}, ${tag})`;
}

for (const { path, rows } of files) {
	describe(`published values in ${path.slice(path.lastIndexOf('/') + 1)}`, () => {
		it.each(rows.map((row) => [titleOf(row), row] as const))('%s', (_title, row) => {
			const answer = row.fn(...(row.inputs as never[]));
			const difference = differenceFrom(answer, row.value);
			expect(difference, `it gives ${JSON.stringify(answer)}`).toBeLessThanOrEqual(row.tolerance);
		});
	});
}

describe('the table of published values', () => {
	it('holds rows in every file of values', () => {
		expect(files.filter(({ rows }) => rows.length === 0).map(({ path }) => path)).toEqual([]);
	});

	it('calls a value seen only where its source was seen', () => {
		const doubtful = all.filter(
			({ tag, source }) => tag === 'seen' && sources[source].seen !== 'seen'
		);
		expect(doubtful.map(titleOf)).toEqual([]);
	});

	it('is plain data but for the functions', () => {
		for (const { fn, ...data } of all) {
			expect(fn.name).not.toBe('');
			expect(JSON.parse(JSON.stringify(data))).toEqual(data);
		}
	});

	it('has no tolerance wider than 15 % of the value', () => {
		const loose = all.filter(
			({ value, tolerance }) =>
				typeof value === 'number' && tolerance > Math.abs(value) * 0.15 + 0.06
		);
		expect(loose.map(titleOf)).toEqual([]);
	});

	it('says nothing twice', () => {
		const titles = all.map(titleOf);
		expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
	});
});

describe('the agreement that is shown to readers', () => {
	const shown = agreements(everyValue);

	it('counts every published value once', () => {
		expect(everyValue.map(titleOf).sort()).toEqual(all.map(titleOf).sort());
		expect(shown.reduce((sum, { count }) => sum + count, 0)).toBe(all.length);
	});

	it('says nowhere more than is allowed', () => {
		expect(shown.filter(({ difference, allowed }) => difference > allowed + 1e-9)).toEqual([]);
	});

	it('shows the value that fits worst, and a wrong one as it is', () => {
		const row = (inputs: readonly unknown[], value: number | string) => ({
			...published('a sum', Math.abs, [0], value, 0.5, 'nistSp811', 'computed'),
			inputs,
			formula: 'units' as const,
			unit: 'bpm' as const
		});
		const [fits] = agreements([row([-3], 3.25), row([4], 3.6), row([1], 1)]);
		expect(fits).toMatchObject({ count: 3, allowed: 0.5 });
		expect(fits?.difference).toBeCloseTo(0.4, 9);
		expect(agreements([row([-3], 4)])[0]?.difference).toBe(1);
		expect(agreements([row([-3], 'three')])[0]?.difference).toBe(Infinity);
	});
});

describe('the difference of an answer from a value', () => {
	it('is nothing where both are the same, words included', () => {
		expect(differenceFrom({ kind: 'none', low: 1 }, { kind: 'none', low: 1 })).toBe(0);
		expect(differenceFrom(null, null)).toBe(0);
	});

	it('is the largest of all numbers, and without end for what is not one', () => {
		expect(differenceFrom({ low: 1, high: 4 }, { low: 1.5, high: 2 })).toBe(2);
		expect(differenceFrom(NaN, 1)).toBe(Infinity);
		expect(differenceFrom(undefined, { low: 1 })).toBe(Infinity);
		expect(differenceFrom('light', 'moderate')).toBe(Infinity);
		expect(differenceFrom('1', 1)).toBe(Infinity);
	});
});
