import { describe, expect, it } from 'vitest';
import { sources } from '../../src/lib/physiology/sources.ts';
import type { PublishedValue, Value } from './published-value.ts';

const modules = import.meta.glob<{ rows?: readonly PublishedValue[] }>(
	['./*.ts', '!./*.test.ts', '!./published-value.ts'],
	{ eager: true }
);
const files = Object.entries(modules).map(([path, { rows }]) => ({ path, rows: rows ?? [] }));
const all = files.flatMap(({ rows }) => rows);

/** Paths at which an answer differs from the value by more than the tolerance. */
function differences(answer: unknown, value: Value, tolerance: number, at = 'answer'): string[] {
	if (typeof value === 'number') {
		const close = typeof answer === 'number' && Math.abs(answer - value) <= tolerance;
		return close ? [] : [`${at} is ${String(answer)}, not ${value} within ${tolerance}`];
	}
	if (typeof value !== 'object' || value === null) {
		return answer === value ? [] : [`${at} is ${String(answer)}, not ${String(value)}`];
	}
	if (typeof answer !== 'object' || answer === null) return [`${at} is not an object`];
	return Object.entries(value).flatMap(([key, inner]) =>
		differences(Reflect.get(answer, key), inner, tolerance, `${at}.${key}`)
	);
}

function titleOf({ name, fn, inputs, value, source, tag }: PublishedValue): string {
	const call = `${fn.name}(${inputs.map((input) => JSON.stringify(input)).join(', ')})`;
	const { authors, year } = sources[source];
	return `${name}: ${call} gives ${JSON.stringify(value)} (${authors.split(',')[0]} ${year ?? 'n.d.'}, ${tag})`;
}

for (const { path, rows } of files) {
	describe(`published values in ${path.slice(2)}`, () => {
		it.each(rows.map((row) => [titleOf(row), row] as const))('%s', (_title, row) => {
			const answer = row.fn(...(row.inputs as never[]));
			expect(differences(answer, row.value, row.tolerance)).toEqual([]);
		});
	});
}

describe('the table of published values', () => {
	it('holds rows in every file of this folder', () => {
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
