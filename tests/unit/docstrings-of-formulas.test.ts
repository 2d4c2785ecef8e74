import { describe, expect, it } from 'vitest';
import { formulas, type Formula } from '../../src/lib/physiology/formulas.ts';
import { sourceIds } from '../../src/lib/physiology/sources.ts';
import { roundHalfUp } from '../../src/lib/physiology/units.ts';

const texts = import.meta.glob<string>('../../src/lib/physiology/*.ts', {
	query: '?raw',
	import: 'default',
	eager: true
});
const files = Object.entries(texts)
	.filter(([path]) => !/\/(sources|formulas|limits|pulse-limit)\.ts$/.test(path))
	.map(([, text]) => text);

/** Look-ups and refusals, which compute nothing that a reader could check by hand. */
const noFormula = new Set(['isEffort', 'givesSpeed', 'plausibleOrRefused']);

/** What stands above each exported function or constant, and the file that it stands in. */
const described = new Map(
	files.flatMap((text) =>
		[
			...text.matchAll(
				/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:function|const) (\w+)|export function (\w+)/g
			)
		].map(([, doc = '', documented, bare]) => [
			documented ?? bare ?? '',
			{ doc: doc.replace(/\s*\n\s*\* ?/g, ' '), text }
		])
	)
);
const exportedFunctions = files.flatMap((text) =>
	[...text.matchAll(/^export function (\w+)/gm)].map(([, name = '']) => name)
);
const records: readonly (readonly [string, Formula])[] = Object.entries(formulas);

const citedIn = (text: string) => sourceIds.filter((id) => new RegExp(`\\b${id}\\b`).test(text));

/** Also what is cited where a docstring points to another: "as in pulseAfter". */
function citedAround(name: string, seen = new Set<string>()): string[] {
	const found = described.get(name);
	if (found === undefined || seen.has(name)) return [];
	seen.add(name);
	const others = [...described.keys()].filter((other) =>
		new RegExp(`\\b${other}\\b`).test(found.doc)
	);
	return [...citedIn(found.text), ...others.flatMap((other) => citedAround(other, seen))];
}

describe('the records of the formulas', () => {
	it('leave no exported formula out, name none that is not there, and none twice', () => {
		const recorded = records.flatMap(([, { code }]) => code);
		// What is missing here needs a record in physiology/formulas.ts and words in methods-formulas.ts.
		expect(exportedFunctions.filter((name) => !isRecorded(name))).toEqual([]);
		expect(recorded.filter((name) => !described.has(name))).toEqual([]);
		expect(new Set(recorded).size).toBe(recorded.length);

		function isRecorded(name: string) {
			return recorded.includes(name) || noFormula.has(name);
		}
	});

	it.each(records)('%s cites what the docstring of its function cites', (_id, record) => {
		const [main = ''] = record.code;
		expect(record.sources).toEqual(expect.arrayContaining(citedIn(described.get(main)?.doc ?? '')));
		const around = record.code.flatMap((name) => citedAround(name));
		expect(record.sources.filter((id) => !around.includes(id))).toEqual([]);
	});

	it.each(records.filter(([, { error }]) => error !== null))(
		'%s has the error that the docstring of one of its functions says',
		(_id, { code, error }) => {
			const docs = code.map((name) => described.get(name)?.doc ?? '').join(' ');
			const amounts = docs.match(/\d+(\.\d+)?/g) ?? [];
			expect(amounts.map(Number)).toContain(shown(error));
			expect(/error|spread|varied/i.test(docs)).toBe(true);
		}
	);

	it.each(records.filter(([, { error }]) => error?.source))(
		'%s has its error from a source that stands with it',
		(_id, { code, error, sources }) => {
			const around = code.flatMap((name) => citedAround(name));
			expect(sources).toContain(error?.source);
			expect(around).toContain(error?.source);
		}
	);
});

/** As a docstring writes it: a share of something stands as per cent. */
function shown(error: Formula['error']): number | null {
	if (error === null) return null;
	return error.unit === 'share' ? roundHalfUp(100 * error.amount, 3) : error.amount;
}
