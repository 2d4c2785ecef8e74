import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beatsOf } from '../../src/routes/coach/[group]/band-form.ts';

// Our own rule, no source.

const roughBeats = [
	{ percent: 20, bpm: 90 },
	{ percent: 50, bpm: 125 },
	{ percent: 62, bpm: 135 }
];
const inForce = { percent: { low: 50, high: 62 }, beats: { low: 123, high: 137 } };

describe('the beats beside a band in the coach’s form', () => {
	it('are none where none are known', () => {
		expect(beatsOf({ inForce: null, roughBeats: null }, { low: 50, high: 62 })).toBeNull();
		expect(beatsOf({ inForce: null, roughBeats }, { low: 50, high: 80 })).toBeNull();
	});

	it('are those that the page tells while the band is the one that counts', () => {
		const shown = beatsOf({ inForce, roughBeats }, { low: 50, high: 62 });
		expect(shown).toEqual({ beats: { low: 123, high: 137 }, isRough: false });
		const under = { percent: { low: null, high: 50 }, beats: { low: null, high: 123 } };
		expect(beatsOf({ inForce: under, roughBeats }, { low: null, high: 50 })?.isRough).toBe(false);
	});

	it('are multiples of five as soon as either edge is another', () => {
		const edge = fc.integer({ min: 20, max: 62 });
		fc.assert(
			fc.property(edge, edge, (low, high) => {
				fc.pre(low !== 50 || high !== 62);
				const shown = beatsOf({ inForce, roughBeats }, { low, high });
				expect(shown?.isRough).toBe(true);
				expect((shown?.beats.low ?? 1) % 5).toBe(0);
				expect((shown?.beats.high ?? 1) % 5).toBe(0);
			})
		);
		expect(beatsOf({ inForce, roughBeats }, { low: null, high: 62 })).toEqual({
			beats: { low: null, high: 135 },
			isRough: true
		});
	});
});
