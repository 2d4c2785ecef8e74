import { describe, expect, it } from 'vitest';
import type { EntryContent } from '$lib/outing/entry.ts';
import { isWrongUntold, leftOuting } from '$lib/outing/left-outing.ts';
import { BEGAN, entriesOf } from './run-entries.ts';

/* Our own rules, no source. Times from the outing of these tests: 420 s to warm up, then a run. */

const HOUR_MS = 60 * 60 * 1000;
const SIX_HOURS_MS = 6 * HOUR_MS;
type Done = readonly (readonly [seconds: number, content: EntryContent])[];
/** What is written when somebody opens the page so long after the last thing that was done. */
const leftAfter = (ms: number, ...done: Done) =>
	leftOuting(entriesOf(...done), BEGAN + (done.at(-1)?.[0] ?? 0) * 1000 + ms);
const ended = { kind: 'ended', how: 'early' } as const;
const notSaid = { kind: 'something-wrong', sign: 'not-said' } as const;
const none = { kind: 'something-wrong', sign: 'none' } as const;

describe('an outing that was left with its clock standing', () => {
	it('is none where nothing was written', () => {
		expect(leftOuting([], BEGAN + SIX_HOURS_MS)).toEqual([]);
	});

	it('ends after six hours of a pause, and not a moment before', () => {
		expect(leftAfter(SIX_HOURS_MS - 1, [60, { kind: 'paused' }])).toEqual([]);
		expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'paused' }])).toEqual([ended]);
	});

	it('counts as a sign where something felt wrong and nobody said what, before it ends', () => {
		expect(leftAfter(SIX_HOURS_MS - 1, [60, { kind: 'halted' }])).toEqual([]);
		expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'halted' }])).toEqual([notSaid, ended]);
		expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'paused' }], [70, { kind: 'halted' }])).toEqual([
			notSaid,
			ended
		]);
	});

	it('holds no sign where it was said to be nothing, though the clock was not started again', () => {
		expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'halted' }], [70, none])).toEqual([ended]);
	});

	it('stands where a pause was skipped over or led to the cool-down walk: the clock did not start', () => {
		for (const still of [
			{ kind: 'skipped', phase: 0 },
			{ kind: 'cooling-down' },
			{ kind: 'pain', level: 'new', where: null }
		] as const) {
			expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'paused' }], [70, still])).toEqual([ended]);
		}
	});

	it('goes on where the clock goes, however long ago something was done', () => {
		const dayMs = 24 * HOUR_MS;
		expect(leftAfter(dayMs)).toEqual([]);
		expect(leftAfter(dayMs, [60, { kind: 'paused' }], [70, { kind: 'resumed' }])).toEqual([]);
		expect(
			leftAfter(dayMs, [60, { kind: 'halted' }], [70, none], [70, { kind: 'resumed' }])
		).toEqual([]);
	});

	it('is over once: nothing is added to one that ended, a sign that nobody explained aside', () => {
		expect(leftAfter(SIX_HOURS_MS, [60, ended])).toEqual([]);
		expect(leftAfter(SIX_HOURS_MS, [60, ended], [90, { kind: 'halted' }])).toEqual([notSaid]);
		expect(leftAfter(SIX_HOURS_MS - 1, [60, ended], [90, { kind: 'halted' }])).toEqual([]);
		expect(leftAfter(SIX_HOURS_MS, [60, ended], [90, { kind: 'halted' }], [95, none])).toEqual([]);
		expect(leftAfter(SIX_HOURS_MS, [60, { kind: 'halted' }], [70, notSaid], [70, ended])).toEqual(
			[]
		);
	});

	it('is left six hours after the last thing that was done in it, not after the pause', () => {
		const entries = entriesOf([60, { kind: 'paused' }], [3660, { kind: 'skipped', phase: 0 }]);
		expect(leftOuting(entries, BEGAN + 60_000 + SIX_HOURS_MS)).toEqual([]);
		expect(leftOuting(entries, BEGAN + 3_660_000 + SIX_HOURS_MS)).toEqual([ended]);
	});
});

describe('something that felt wrong', () => {
	it('is untold until somebody says what, each time anew', () => {
		expect(isWrongUntold([])).toBe(false);
		expect(isWrongUntold(entriesOf([60, { kind: 'halted' }]))).toBe(true);
		expect(isWrongUntold(entriesOf([60, { kind: 'halted' }], [70, none]))).toBe(false);
		expect(
			isWrongUntold(entriesOf([60, { kind: 'halted' }], [70, none], [80, { kind: 'halted' }]))
		).toBe(true);
	});

	it('is untold in whatever order the entries lie', () => {
		const entries = entriesOf([60, { kind: 'halted' }], [70, none]);
		expect(isWrongUntold([...entries].reverse())).toBe(false);
	});
});
