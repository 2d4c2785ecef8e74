import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logOfEntries } from '$lib/outing/log-of-entries.ts';
import { anyEntry } from './any-entry.ts';
import { entriesOf } from './run-entries.ts';

/* Our own rules, no source. */

describe('the log of what was written down', () => {
	it('holds what touches the clock, and nothing of answers or pain', () => {
		const answer = {
			kind: 'talk-answer',
			phase: 1,
			secondsIntoPhase: 40,
			talk: 'comfortable',
			effort: 5,
			speedKmh: null,
			afterPassage: false,
			pulse: null
		} as const;
		const entries = entriesOf(
			[10, { kind: 'paused' }],
			[20, { kind: 'resumed' }],
			[460, answer],
			[480, { kind: 'added-seconds', phase: 2, seconds: 30 }],
			[490, { kind: 'skipped', phase: 2 }],
			[500, { kind: 'pain', level: 'new', where: null }],
			[500, { kind: 'ended', how: 'early' }]
		);
		expect(logOfEntries(entries)).toEqual([
			{ kind: 'paused', atMs: 10_000 },
			{ kind: 'resumed', atMs: 20_000 },
			{ kind: 'added', phase: 2, atMs: 480_000 },
			{ kind: 'skipped', phase: 2, atMs: 490_000 },
			{ kind: 'ended', atMs: 500_000 }
		]);
	});

	it('is the same in whatever order they lie, and read twice', () => {
		fc.assert(
			fc.property(fc.array(anyEntry, { maxLength: 12 }), (entries) => {
				const log = logOfEntries(entries);
				expect(logOfEntries([...entries, ...entries].reverse())).toEqual(log);
			})
		);
	});
});
