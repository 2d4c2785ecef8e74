import { describe, expect, it } from 'vitest';
import { sourceIds, sources, type Source } from '../../../src/lib/physiology/sources.ts';

const texts = import.meta.glob<string>('../../../src/lib/{physiology,outing,recording}/*.ts', {
	query: '?raw',
	import: 'default',
	eager: true
});
const docstrings = Object.entries(texts)
	.filter(([path]) => !path.endsWith('/sources.ts'))
	.flatMap(([, text]) => text.match(/\/\*\*[\s\S]*?\*\//g) ?? [])
	.join('\n');

describe('sources', () => {
	it.each(Object.entries(sources) as [string, Source][])('%s can be looked up', (id, source) => {
		expect(id).toMatch(/^[a-zA-Z0-9]+$/);
		expect(source.authors).not.toBe('');
		expect(source.where).not.toBe('');
		if (source.doi !== null) expect(source.doi).toMatch(/^10\.\d{4,}\/\S+$/);
		if (source.year !== null) expect(source.year).toBeGreaterThan(1950);
		if (/\d{4}$/.test(id)) expect(source.year).toBe(Number(id.slice(-4)));
	});

	it('hold everything that a docstring cites by name and year', () => {
		const cited = docstrings.match(/\b[a-z][A-Za-z]*(?:19|20)\d{2}\b/g) ?? [];
		expect(cited.length).toBeGreaterThan(20);
		expect([...new Set(cited)].filter((id) => !sourceIds.some((known) => known === id))).toEqual(
			[]
		);
	});

	it('name no DOI twice', () => {
		const dois = Object.values(sources).flatMap(({ doi }) => (doi === null ? [] : [doi]));
		expect(new Set(dois).size).toBe(dois.length);
	});
});
