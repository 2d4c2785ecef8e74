import fc from 'fast-check';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { tappedPulse, TAPS_KEPT, TAPS_NEEDED } from '$lib/recording/tapped-pulse.ts';
import { lowAfterStopping, tenSecondCount } from '$lib/recording/ten-second-count.ts';
import { countedAs } from '$lib/physiology/pulse-count.ts';

/* Sixty over a mean interval, and six times a count, are definitions; the error is propagated to
   first order, common practice. Limits are our own. */

const tapsOf = (intervalsMs: readonly number[], from = 0) => {
	let at = from;
	return [at, ...intervalsMs.map((ms) => (at += ms))];
};
const evenly = (ms: number, beats: number) => tapsOf(Array.from({ length: beats - 1 }, () => ms));

describe('tapping along with the pulse', () => {
	it('needs ten taps', () => {
		expect(tappedPulse([])).toEqual({ kind: 'more-taps', left: TAPS_NEEDED });
		expect(tappedPulse(evenly(500, 9))).toEqual({ kind: 'more-taps', left: 1 });
	});

	it('is sixty over the interval in seconds, without doubt where taps are even', () => {
		expect(tappedPulse(evenly(600, 10))).toEqual({
			kind: 'tapped',
			bpm: 100,
			spreadBpm: 0,
			beats: 10
		});
	});

	it('mean and standard error are those of simple-statistics, propagated', () => {
		const intervals = fc.array(fc.integer({ min: 400, max: 560 }), {
			minLength: TAPS_NEEDED - 1,
			maxLength: TAPS_KEPT - 1
		});
		fc.assert(
			fc.property(intervals, (made) => {
				const told = tappedPulse(tapsOf(made));
				if (told.kind !== 'tapped') throw new Error(told.kind);
				const bpm = 60_000 / mean([...made]);
				const error = sampleStandardDeviation([...made]) / Math.sqrt(made.length);
				expect(told.bpm).toBeCloseTo(bpm, 6);
				expect(told.spreadBpm).toBeCloseTo((60_000 / mean([...made]) ** 2) * error, 6);
			})
		);
	});

	it('its doubt is not smaller than the true error of taps that are late by chance', () => {
		// Late by 40 ms, one standard deviation, in a fixed pattern of nearly that spread.
		const late = [
			-60, 20, 40, -20, 0, 60, -40, 30, -50, 20, 10, -30, 50, -10, 0, 40, -60, 20, 30, -50
		];
		const told = tappedPulse(late.map((ms, i) => 1000 + i * 462 + ms));
		if (told.kind !== 'tapped') throw new Error(told.kind);
		expect(Math.abs(told.bpm - 60_000 / 462)).toBeLessThan(told.spreadBpm);
		expect(told.spreadBpm).toBeLessThan(6);
	});

	it('leaves a missed beat out, and a double one', () => {
		const once = [500, 500, 1000, 500, 500, 500, 500, 500, 500, 500];
		expect(tappedPulse(tapsOf(once))).toMatchObject({ kind: 'tapped', bpm: 120 });
	});

	it('says so where taps are too uneven to mean anything', () => {
		const wild = [300, 900, 320, 1200, 280, 900, 310, 950, 300, 1000];
		expect(tappedPulse(tapsOf(wild))).toEqual({ kind: 'uneven' });
	});

	it('begins anew after a pause of three seconds', () => {
		const before = evenly(500, 12);
		const resumed = (before.at(-1) ?? 0) + 3001;
		expect(tappedPulse([...before, resumed])).toEqual({ kind: 'more-taps', left: 9 });
	});

	it('forgets old taps, so that a pulse that rises is followed', () => {
		const rising = [
			...Array.from({ length: 20 }, () => 600),
			...Array.from({ length: 20 }, () => 450)
		];
		expect(tappedPulse(tapsOf(rising))).toMatchObject({ bpm: 60_000 / 450 });
	});

	it('does not believe a drummer', () => {
		expect(tappedPulse(evenly(100, 20))).toEqual({ kind: 'not-believed' });
	});

	it('no taps make it throw, or give a number that is none', () => {
		const times = fc.array(fc.integer({ min: 0, max: 60_000 }), { maxLength: 60 });
		fc.assert(
			fc.property(times, (made) => {
				const told = tappedPulse(made.sort((one, other) => one - other));
				if (told.kind !== 'tapped') return;
				expect(told.bpm).toBeGreaterThanOrEqual(25);
				expect(told.bpm).toBeLessThanOrEqual(230);
				expect(Number.isFinite(told.spreadBpm)).toBe(true);
			})
		);
	});
});

describe('a count of ten seconds', () => {
	it.each([
		[0, { kind: 'not-believed' }],
		[4, { kind: 'not-believed' }],
		[22, { kind: 'counted', bpm: 132, spreadBpm: 3, mostBpm: 6 }],
		[39, { kind: 'not-believed' }],
		[-1, { kind: 'not-whole' }],
		[12.5, { kind: 'not-whole' }],
		[NaN, { kind: 'not-whole' }]
	])('of %s beats', (beats, told) => {
		expect(tenSecondCount(beats)).toEqual(told);
	});

	it('of a steady pulse is never off by more than it says (a true 130 is 126 or 132)', () => {
		expect(countedAs(10, 130)).toEqual({ low: 126, high: 132 });
		fc.assert(
			fc.property(fc.double({ min: 40, max: 220, noNaN: true }), (bpm) => {
				const { low, high } = countedAs(10, bpm);
				for (const counted of [low, high]) {
					const told = tenSecondCount(Math.round(counted / 6));
					if (told.kind !== 'counted') throw new Error(told.kind);
					expect(Math.abs(told.bpm - bpm)).toBeLessThanOrEqual(told.mostBpm + 1e-9);
				}
			})
		);
	});

	it('reads some eight beats low after stopping (barak2011, computed)', () => {
		expect(lowAfterStopping()).toBeCloseTo(7.832, 3);
	});
});
