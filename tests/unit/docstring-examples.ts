import { compileFunction } from 'node:vm';

export interface Example {
	/** Line of the source file on which the example stands. */
	readonly line: number;
	readonly call: string;
	readonly answer: string;
}

/** A number as written in a docstring, and how far an answer may lie from it. */
class Shown {
	readonly value: number;
	readonly tolerance: number;

	/** A whole number holds to a thousandth; digits after the point leave half of the last open. */
	constructor(text: string) {
		this.value = Number(text);
		const [digits = '', exponent = '0'] = text.split('e');
		const decimals = digits.split('.')[1]?.length ?? 0;
		const lastDigit = 10 ** (Number(exponent) - decimals);
		this.tolerance =
			decimals === 0 ? lastDigit / 1000 : lastDigit / 2 + 1e-9 * Math.abs(this.value);
	}
}

/**
 * Every example of a file: what stands after `@example` on its line or on those below it, as
 * `call // answer`. A call may go on over several lines; the answer ends its line.
 */
export function examplesIn(text: string): Example[] {
	return docstringsIn(text).flatMap(({ body, line }) => {
		const examples: Example[] = [];
		let inside = false;
		let call = '';
		for (const [at, raw] of body.split('\n').entries()) {
			const written = raw.replace(/^\s*\*? ?/, '');
			if (/^\s*@/.test(written)) inside = /^\s*@example\b/.test(written);
			if (!inside) continue;
			const [code = '', ...answer] = written.replace(/^\s*@example\b/, '').split(' // ');
			call += code.trim();
			if (answer.length === 0) continue;
			examples.push({ line: line + at, call, answer: answer.join(' // ').trim() });
			call = '';
		}
		if (call !== '') examples.push({ line, call, answer: '' });
		return examples;
	});
}

/** Names of exported functions whose docstring has no example that mentions them. */
export function functionsWithoutExample(text: string): string[] {
	const names = [...text.matchAll(/^export function (\w+)/gm)].map(([, name = '']) => name);
	const calls = docstringsIn(text).map(({ body, documents }) => ({
		documents,
		shown: body.includes('@example') && body.includes(`${documents}(`)
	}));
	return names.filter((name) => !calls.some(({ documents, shown }) => documents === name && shown));
}

function docstringsIn(text: string): { body: string; line: number; documents: string }[] {
	const found = text.matchAll(/\/\*\*([\s\S]*?)\*\/\s*(?:export\s+)?(?:function\s+(\w+))?/g);
	return [...found].map((match) => ({
		body: match[1] ?? '',
		line: text.slice(0, match.index).split('\n').length,
		documents: match[2] ?? ''
	}));
}

/** What is wrong with an example, or null. The names are those of exported functions and constants. */
export function faultOf(example: Example, names: Readonly<Record<string, unknown>>): string | null {
	const { call, answer } = example;
	if (answer === '') return 'it gives no answer';
	const error = /^throws (\w+)$/.exec(answer)?.[1];
	if (error !== undefined) return faultOfThrow(call, error, names);
	const shown = answer.replace(/'[^']*'|"[^"]*"|(?<![\w.$])-?\d+(?:\.\d+)?(?:e-?\d+)?/g, (word) =>
		/^['"]/.test(word) ? word : `shown('${word}')`
	);
	const expected = evaluate(shown, { shown: (text: string) => new Shown(text) });
	return difference(evaluate(call, names), expected, 'it');
}

function faultOfThrow(call: string, error: string, names: Readonly<Record<string, unknown>>) {
	try {
		evaluate(call, names);
	} catch (thrown) {
		const name = thrown instanceof Error ? thrown.name : String(thrown);
		return name === error ? null : `it throws ${name}`;
	}
	return 'it does not throw';
}

function evaluate(code: string, names: Readonly<Record<string, unknown>>): unknown {
	const run = compileFunction(`'use strict'; return (${code});`, Object.keys(names));
	return Reflect.apply(run, undefined, Object.values(names)) as unknown;
}

function difference(actual: unknown, expected: unknown, at: string): string | null {
	if (expected instanceof Shown) {
		if (typeof actual !== 'number') return `${at} is ${String(actual)}, not a number`;
		const close = Math.abs(actual - expected.value) <= expected.tolerance;
		return close ? null : `${at} is ${actual}, not ${expected.value}`;
	}
	if (typeof expected !== 'object' || expected === null) {
		return Object.is(actual, expected) ? null : `${at} is ${JSON.stringify(actual)}`;
	}
	if (typeof actual !== 'object' || actual === null) return `${at} is ${String(actual)}`;
	const keys = [...new Set([...Object.keys(actual), ...Object.keys(expected)])];
	for (const key of keys) {
		const fault = difference(Reflect.get(actual, key), Reflect.get(expected, key), `${at}.${key}`);
		if (fault !== null) return fault;
	}
	return null;
}
