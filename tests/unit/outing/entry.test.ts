import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkEntry } from '$lib/forms/entry.ts';
import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { mergeEntries } from '$lib/outing/merge-entries.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { anyEntry, RUN } from './any-entry.ts';

/* The laws of a set that grows: common practice, no source. */

const entries = fc.array(anyEntry, { maxLength: 30 });

const entry = (seq: number, content: EntryContent): Entry => ({
	id: `00000000-0000-4000-8000-${String(seq).padStart(12, '0')}`,
	outingRunId: RUN,
	at: 1_764_000_000_000 + seq,
	seq,
	elapsedMs: 0,
	...content
});

describe('a merge', () => {
	it('of nothing is nothing', () => {
		expect(mergeEntries()).toEqual([]);
	});

	it('is the same however often and in whatever order entries arrive', () => {
		fc.assert(
			fc.property(entries, entries, (some, others) => {
				const once = mergeEntries(some, others);
				expect(mergeEntries(others, some)).toEqual(once);
				expect(mergeEntries([...some].reverse(), once, others, some)).toEqual(once);
				expect(mergeEntries(mergeEntries(some), mergeEntries(others))).toEqual(once);
			})
		);
	});

	it('loses and doubles no id, and goes by number', () => {
		fc.assert(
			fc.property(entries, (some) => {
				const merged = mergeEntries(some, some);
				const ids = new Set(some.map(({ id }) => id));
				expect(merged.map(({ id }) => id).sort()).toEqual([...ids].sort());
				const numbers = merged.map(({ seq }) => seq);
				expect(numbers).toEqual([...numbers].sort((one, other) => one - other));
			})
		);
	});

	it('of one id with two contents does not depend on which came first', () => {
		const one = entry(1, { kind: 'paused' });
		const other = entry(1, { kind: 'resumed' });
		expect(mergeEntries([one], [other])).toEqual(mergeEntries([other], [one]));
		expect(mergeEntries([one], [other])).toHaveLength(1);
	});
});

describe('what entries come to', () => {
	const talk = (seq: number, level: 'comfortable' | 'broke-off', afterPassage = false) =>
		entry(seq, {
			kind: 'talk-answer',
			phase: 1,
			secondsIntoPhase: 40,
			talk: level,
			effort: 5,
			speedKmh: null,
			afterPassage,
			pulse: null
		});

	it('is the same in whatever order they arrive', () => {
		fc.assert(
			fc.property(fc.array(anyEntry, { minLength: 1, maxLength: 30 }), (some) => {
				expect(settleEntries([...some].reverse())).toEqual(settleEntries(some));
			})
		);
	});

	it('takes the first of two ends', () => {
		const first = entry(3, { kind: 'ended', how: 'early' });
		const done = settleEntries([entry(4, { kind: 'ended', how: 'finished' }), first]);
		expect(done.ended).toEqual(first);
	});

	it('takes the last answer about a phase, also after the end, the passage apart', () => {
		const end = entry(3, { kind: 'ended', how: 'early' });
		const said = [talk(1, 'comfortable'), talk(2, 'comfortable', true), end, talk(4, 'broke-off')];
		expect(settleEntries(said).answers.map(({ seq }) => seq)).toEqual([2, 4]);
	});

	it('forgets no sign that something was wrong', () => {
		const signs = [1, 2].map((seq) => entry(seq, { kind: 'something-wrong', sign: 'ask-first' }));
		expect(settleEntries(signs).wrong).toHaveLength(2);
	});

	it('refuses entries of two outing runs, and none', () => {
		const other = {
			...talk(2, 'comfortable'),
			outingRunId: '6f1c9c2e-3b7a-4f43-9d62-0c9bb2c1a002'
		};
		expect(() => settleEntries([talk(1, 'comfortable'), other])).toThrow(RangeError);
		expect(() => settleEntries([])).toThrow(RangeError);
	});
});

describe('an entry at the edge', () => {
	it('is taken as it was written', () => {
		fc.assert(
			fc.property(anyEntry, (some) => {
				expect(checkEntry(JSON.parse(JSON.stringify(some)))).toEqual(some);
			})
		);
	});

	it.each([
		['no id', { ...entry(1, { kind: 'paused' }), id: 'x' }],
		['a kind that is not known', { ...entry(1, { kind: 'paused' }), kind: 'slept' }],
		['a field too many', { ...entry(1, { kind: 'paused' }), note: 'free text' }],
		[
			'effort 11',
			{ ...entry(1, { kind: 'ended', how: 'early' }), kind: 'talk-answer', effort: 11 }
		],
		['nothing', null]
	])('with %s is refused', (_, sent) => {
		expect(checkEntry(sent)).toBeNull();
	});
});
