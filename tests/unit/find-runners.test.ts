import { describe, expect, test } from 'vitest';
import {
	askedIn,
	EVERYBODY,
	find,
	isEverybody
} from '../../src/routes/coach/[group]/find-runners.ts';

const row = (name: string, word: 'not-joined' | 'not-shared' = 'not-joined') => ({
	name,
	state: { open: false, word } as const
});

const rows = [row('Siobhán O’Neill'), row('Mei-Lin'), row('راشِد'), row('Zoë', 'not-shared')];
const found = (name: string, word: 'not-shared' | null = null) =>
	find(rows, { name, word }).map((one) => one.name);

const sent = (fields: Record<string, string>) => {
	const form = new FormData();
	for (const [field, value] of Object.entries(fields)) form.set(field, value);
	return form;
};

// Invented names; our own rules, no source.
describe('a search of the roster', () => {
	test('for nothing finds everybody', () => {
		expect(find(rows, EVERYBODY)).toEqual(rows);
		expect(found('   ')).toHaveLength(4);
		expect(find([], { name: 'x', word: null })).toEqual([]);
	});

	test.each([
		['SIOBHAN', 'Siobhán O’Neill'],
		["o'neill", 'Siobhán O’Neill'],
		['oneill', 'Siobhán O’Neill'],
		['meilin', 'Mei-Lin'],
		['mei-l', 'Mei-Lin'],
		['راشد', 'راشِد'],
		['zoe', 'Zoë'],
		['ë', 'Zoë']
	])('for %s finds %s', (typed, name) => {
		expect(found(typed)).toContain(name);
	});

	test('finds by the word beside the name, and by both', () => {
		expect(found('', 'not-shared')).toEqual(['Zoë']);
		expect(found('mei', 'not-shared')).toEqual([]);
	});

	test('that cannot be understood looks for everybody', () => {
		expect(askedIn(sent({}))).toEqual(EVERYBODY);
		expect(askedIn(sent({ word: 'CLEARED_ALL' }))).toEqual(EVERYBODY);
		expect(askedIn(sent({ name: 'x'.repeat(90), word: 'not-today' }))).toEqual({
			name: 'x'.repeat(60),
			word: 'not-today'
		});
		const file = new FormData();
		file.set('name', new Blob(['x']));
		expect(isEverybody(askedIn(file))).toBe(true);
	});
});
