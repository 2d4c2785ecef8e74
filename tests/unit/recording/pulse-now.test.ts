import fc from 'fast-check';
import { median as referenceMedian } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { median } from '$lib/recording/median.ts';
import { pulseNow, type PulseReading } from '$lib/recording/pulse-now.ts';

/* Our own rules, no source. */

const held = (bpm: number | null, atMs: number): PulseReading => ({ atMs, bpm, contact: 'held' });
const everySecond = (...pulses: readonly (number | null)[]) =>
	pulses.map((bpm, i) => held(bpm, i * 1000));

describe('the pulse now', () => {
	it('is none before anything came', () => {
		expect(pulseNow([], 0)).toEqual({ kind: 'none', why: 'nothing-yet' });
	});

	it('waits for three readings', () => {
		expect(pulseNow(everySecond(120, 121), 1100)).toEqual({ kind: 'none', why: 'settling' });
		expect(pulseNow(everySecond(120, 121, 122), 2100)).toEqual({ kind: 'known', bpm: 121 });
	});

	it('goes with contact at once, and comes back after three readings in contact', () => {
		const lost: PulseReading = { atMs: 4000, bpm: 171, contact: 'lost' };
		const readings = [...everySecond(120, 121, 122, 122), lost];
		expect(pulseNow(readings, 4100)).toEqual({ kind: 'none', why: 'contact-lost' });
		const back = [held(130, 5000), held(131, 6000)];
		expect(pulseNow([...readings, ...back], 6100)).toEqual({ kind: 'none', why: 'settling' });
		expect(pulseNow([...readings, ...back, held(132, 7000)], 7100)).toEqual({
			kind: 'known',
			bpm: 131
		});
	});

	it('goes after five seconds of silence, and does not mix what came before with what comes after', () => {
		const readings = everySecond(120, 121, 122);
		expect(pulseNow(readings, 7000).kind).toBe('known');
		expect(pulseNow(readings, 7001)).toEqual({ kind: 'none', why: 'silent' });
		const after = [...readings, held(90, 7500)];
		expect(pulseNow(after, 7600)).toEqual({ kind: 'none', why: 'settling' });
	});

	it('is not moved by one wild value, nor by a sensor that says it has none', () => {
		expect(pulseNow(everySecond(120, 121, 229, 121), 3100)).toEqual({ kind: 'known', bpm: 121 });
		expect(pulseNow(everySecond(120, 300, 121, null, 121), 4100)).toEqual({
			kind: 'known',
			bpm: 121
		});
	});

	it('is none while values lie all over the place', () => {
		expect(pulseNow(everySecond(80, 170, 120, 60, 200), 4100)).toEqual({
			kind: 'none',
			why: 'unsteady'
		});
	});

	it('does not depend on whether a sensor tells its contact', () => {
		const silent = everySecond(120, 121, 122).map((one) => ({
			...one,
			contact: 'not-told' as const
		}));
		expect(pulseNow(silent, 2100)).toEqual({ kind: 'known', bpm: 121 });
	});

	it('always lies among what the sensor said in the last seconds', () => {
		const readings = fc.array(
			fc.record({
				bpm: fc.option(fc.integer({ min: 1, max: 400 })),
				contact: fc.constantFrom('held' as const, 'lost' as const, 'not-told' as const),
				gapMs: fc.integer({ min: 0, max: 8000 })
			}),
			{ maxLength: 30 }
		);
		fc.assert(
			fc.property(readings, (made) => {
				let atMs = 0;
				const all = made.map(({ bpm, contact, gapMs }) => ({
					atMs: (atMs += gapMs),
					bpm,
					contact
				}));
				const now = pulseNow(all, atMs);
				if (now.kind === 'none') return;
				const recent = all.filter((one) => atMs - one.atMs <= 6000).flatMap(({ bpm }) => bpm ?? []);
				expect(now.bpm).toBeGreaterThanOrEqual(Math.min(...recent));
				expect(now.bpm).toBeLessThanOrEqual(Math.min(230, Math.max(...recent)));
				expect(all.at(-1)?.contact).not.toBe('lost');
			})
		);
	});
});

describe('the median', () => {
	it('is that of simple-statistics', () => {
		const numbers = fc.array(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), { minLength: 1 });
		fc.assert(
			fc.property(numbers, (values) => {
				expect(median(values)).toBeCloseTo(referenceMedian([...values]), 6);
			})
		);
	});

	it('needs a number', () => {
		expect(() => median([])).toThrow(RangeError);
	});
});
