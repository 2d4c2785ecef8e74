import { describe, expect, it } from 'vitest';
import { examplesIn, faultOf, functionsWithoutExample } from './docstring-examples.ts';

const texts = import.meta.glob<string>(
	'../../src/lib/{calendar,physiology,screening,outing,recording,guidance}/**/*.ts',
	{ query: '?raw', import: 'default', eager: true }
);
const modules = import.meta.glob<Record<string, unknown>>(
	'../../src/lib/{calendar,physiology,screening,outing,recording,guidance}/**/*.ts'
);

const folderOf = (path: string) => path.slice(0, path.lastIndexOf('/') + 1);

/** What the file itself exports, over what its neighbours and those of the folders around do. */
async function namesFor(path: string): Promise<Record<string, unknown>> {
	const neighbours = Object.keys(modules)
		.filter((other) => path.startsWith(folderOf(other)) || other.startsWith(folderOf(path)))
		.sort((one, other) => folderOf(one).length - folderOf(other).length);
	const loaded = await Promise.allSettled(neighbours.map(async (other) => modules[other]?.()));
	const exported = loaded.map((result) => (result.status === 'fulfilled' ? result.value : {}));
	return Object.assign({}, ...exported, await modules[path]?.());
}

const shortened = (path: string) => path.replace('../../src/lib/', '');
const files = Object.entries(texts).map(([path, text]) => ({ path, file: shortened(path), text }));
const withExamples = files.filter(({ text }) => examplesIn(text).length > 0);
const formulas = files.filter(({ file }) => file.startsWith('physiology/'));

describe('the examples in docstrings', () => {
	it('are there to be read', () => {
		expect(withExamples.length).toBeGreaterThan(10);
	});

	it.each(withExamples)('of $file give the answers that they show', async ({ path, text }) => {
		const names = await namesFor(path);
		const faults = examplesIn(text).map((example) => ({
			...example,
			fault: faultOf(example, names)
		}));
		expect(faults.filter(({ fault }) => fault !== null)).toEqual([]);
	});

	it.each(formulas)('stand with each formula of $file', ({ text }) => {
		expect(functionsWithoutExample(text)).toEqual([]);
	});
});

describe('the check of the examples', () => {
	const names = {
		double: (amount: number) => 2 * amount,
		fail: () => void Reflect.apply(bad, 0, [])
	};
	const bad = () => {
		throw new RangeError('fail requires nothing');
	};
	const check = (call: string, answer: string) => faultOf({ line: 1, call, answer }, names);

	it('finds examples on the line of the tag and below it, and ends at the next tag', () => {
		const text =
			'/**\n * @example one(1) // 1\n * @example\n * two(\n *   2\n * ) // 2\n * @returns 3 // 4\n */';
		expect(examplesIn(text)).toEqual([
			{ line: 2, call: 'one(1)', answer: '1' },
			{ line: 6, call: 'two(2)', answer: '2' }
		]);
	});

	it('takes whole numbers to a thousandth and others to the last digit shown', () => {
		expect(check('double(2)', '4')).toBeNull();
		expect(check('double(2.0001)', '4')).toBeNull();
		expect(check('double(2.001)', '4')).not.toBeNull();
		expect(check('double(1.0702)', '2.14')).toBeNull();
		expect(check('double(1.0702)', '2.141')).not.toBeNull();
		expect(check('double(-1.5)', '-3')).toBeNull();
		expect(check('double(0.000215)', '4.3e-4')).toBeNull();
		expect(check('double(0.000225)', '4.3e-4')).not.toBeNull();
	});

	it('compares objects, lists and words whole', () => {
		expect(check("{ a: double(1), b: ['4 x'] }", "{ a: 2, b: ['4 x'] }")).toBeNull();
		expect(check("{ a: double(1), b: ['4 x'] }", '{ a: 2 }')).not.toBeNull();
		expect(check('[double(1)]', '[2, 3]')).not.toBeNull();
		expect(check('true', 'false')).not.toBeNull();
	});

	it('knows examples that throw, and those that say nothing', () => {
		expect(check('fail()', 'throws RangeError')).toBeNull();
		expect(check('fail()', 'throws TypeError')).not.toBeNull();
		expect(check('double(1)', 'throws RangeError')).not.toBeNull();
		expect(check('double(1)', '')).not.toBeNull();
	});

	it('misses a formula without an example', () => {
		const shown = '/**\n * @example half(2) // 1\n */\nexport function half(of: number) {}\n';
		const bare =
			'/** Doubles. */\nexport function double(of: number) {}\nexport function naked() {}\n';
		expect(functionsWithoutExample(shown + bare)).toEqual(['double', 'naked']);
	});
});
