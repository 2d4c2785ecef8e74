import { describe, expect, test } from 'vitest';
import { lengthOf, plainOuting, startsOf } from '$lib/outing/plain-outing.ts';

// Our own choice, no source.

describe('the plain outing', () => {
	const runs = plainOuting.filter(({ kind }) => kind === 'steady-run');

	test('begins with a warm-up of 6 to 8 minutes and ends with a cool-down of 6 or more', () => {
		expect(plainOuting[0]).toMatchObject({ kind: 'warm-up-walk' });
		expect(plainOuting[0]?.seconds).toBeGreaterThanOrEqual(360);
		expect(plainOuting[0]?.seconds).toBeLessThanOrEqual(480);
		expect(plainOuting.at(-1)).toMatchObject({ kind: 'cool-down-walk' });
		expect(plainOuting.at(-1)?.seconds).toBeGreaterThanOrEqual(360);
	});

	test('has uneven runs that rise to the longest and fall again', () => {
		const lengths = runs.map(({ seconds }) => seconds);
		const top = lengths.indexOf(Math.max(...lengths));
		expect(lengths.slice(0, top + 1)).toEqual(lengths.slice(0, top + 1).toSorted((a, b) => a - b));
		expect(lengths.slice(top)).toEqual(lengths.slice(top).toSorted((a, b) => b - a));
		expect(new Set(lengths).size).toBeGreaterThan(2);
	});

	test('never has two runs without a walk between', () => {
		plainOuting.forEach(({ kind }, i) => {
			if (kind === 'steady-run') expect(plainOuting[i + 1]?.kind).not.toBe('steady-run');
		});
	});

	// 420 + 30 + 110 + 40 + 110 + 50 + 110 + 40 + 110 + 30 + 420, added by hand.
	test('lasts 24 and a half minutes, 3:10 of it running', () => {
		expect(lengthOf(plainOuting)).toEqual({
			seconds: 1470,
			runSeconds: 190,
			longestRunSeconds: 50
		});
		expect(startsOf(plainOuting).at(-1)).toBe(1470 - 420);
	});
});

test('an outing without phases lasts no time', () => {
	expect(lengthOf([])).toEqual({ seconds: 0, runSeconds: 0, longestRunSeconds: 0 });
	expect(startsOf([])).toEqual([]);
});
