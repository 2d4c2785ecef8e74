import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyTally, ofPhase, tallied } from '$lib/recording/pulse-tally.ts';

/* Our own rules, no source. */

type Sample = readonly [atMs: number, bpm: number | null];
const tally = (...samples: readonly Sample[]) =>
	ofPhase(samples.reduce((before, [atMs, bpm]) => tallied(before, atMs, bpm), emptyTally));

describe('the pulse of a phase', () => {
	it('is none where nothing was measured', () => {
		expect(tally()).toBeNull();
		expect(tally([0, null], [1000, null])).toBeNull();
	});

	it('is the mean over time in contact, not over messages', () => {
		expect(tally([0, 100], [2000, 130], [3000, null])).toEqual({
			meanBpm: 110,
			highestBpm: 130,
			measuredSeconds: 3
		});
	});

	it('counts no time without contact', () => {
		expect(tally([0, 120], [1000, null], [60_000, 120], [61_000, 120])).toEqual({
			meanBpm: 120,
			highestBpm: 120,
			measuredSeconds: 2
		});
	});

	it('lets a value stand for three seconds at most', () => {
		expect(tally([0, 120], [60_000, null])?.measuredSeconds).toBe(3);
	});

	it('a clock that goes back adds nothing', () => {
		expect(tally([10_000, 120], [0, 120])).toBeNull();
	});

	it('the mean lies between the lowest and the highest, and time never grows past the clock', () => {
		const steps = fc.array(
			fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.option(fc.integer({ min: 30, max: 220 }))),
			{ maxLength: 100 }
		);
		fc.assert(
			fc.property(steps, (made) => {
				let atMs = 0;
				const samples = made.map(([gapMs, bpm]): Sample => [(atMs += gapMs), bpm]);
				const pulse = tally(...samples);
				if (pulse === null) return;
				const known = samples.flatMap(([, bpm]) => bpm ?? []);
				expect(pulse.meanBpm).toBeGreaterThanOrEqual(Math.min(...known) - 1e-9);
				expect(pulse.meanBpm).toBeLessThanOrEqual(pulse.highestBpm + 1e-9);
				expect(pulse.highestBpm).toBe(Math.max(...known));
				expect(pulse.measuredSeconds * 1000).toBeLessThanOrEqual(atMs);
			})
		);
	});
});
