import { describe, expect, it } from 'vitest';
import { clockOfEntries } from '$lib/outing/clock-of-entries.ts';
import { tellTime } from '$lib/outing/outing-clock.ts';
import { BEGAN, entriesOf } from './run-entries.ts';

/* Our own rules, no source. */

const entries = entriesOf([100, { kind: 'paused' }], [160, { kind: 'resumed' }]);
const wall = (seconds: number) => ({
	wallMs: BEGAN + seconds * 1000,
	steadyMs: 3,
	since: 'a new page'
});

describe('the clock of an outing that was interrupted', () => {
	it('requires that something was written', () => {
		expect(() => clockOfEntries([], null)).toThrow(RangeError);
	});

	it('goes on from the last entry by the clock on the wall, pauses included', () => {
		expect(tellTime(clockOfEntries(entries, null), wall(500)).elapsedMs).toBe(500_000);
	});

	it('never goes back, whatever was done to the clock on the wall', () => {
		expect(tellTime(clockOfEntries(entries, null), wall(-7200)).elapsedMs).toBe(160_000);
	});

	it('goes on from a reading that was kept since: what passed before the clock was set stays', () => {
		const kept = { elapsedMs: 400_000, reading: wall(-3200) };
		expect(tellTime(clockOfEntries(entries, kept), wall(-3100)).elapsedMs).toBe(500_000);
	});

	it('takes an older reading for nothing', () => {
		const old = { elapsedMs: 90_000, reading: wall(90) };
		expect(clockOfEntries(entries, old).elapsedMs).toBe(160_000);
	});
});
