import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { afterWalk, walkingPulse, walkingSpeed } from '$lib/guidance/typed-walk.ts';

// Our own rules, no source; units by js-quantities.

describe('a walk as it is typed', () => {
	it('never takes beats of 15 seconds for beats a minute, up to a pulse of 198', () => {
		fc.assert(
			fc.property(fc.integer({ min: 50, max: 198 }), (bpm) => {
				const beats = Math.round(bpm / 4);
				expect(walkingPulse(beats, 'minute').ok).toBe(beats >= 50);
			})
		);
	});

	it('never takes beats a minute for those of 15 seconds, from a pulse of 58 on', () => {
		fc.assert(
			fc.property(fc.integer({ min: 58, max: 230 }), (bpm) => {
				expect(walkingPulse(bpm, 'count-15')).toEqual({ ok: false, code: 'count-too-high' });
			})
		);
	});

	it('tells too few and too many apart', () => {
		expect(walkingPulse(12, 'count-15')).toEqual({ ok: false, code: 'count-too-low' });
		expect(walkingPulse(13, 'count-15')).toEqual({ ok: true, bpm: 52 });
		expect(walkingPulse(231, 'minute')).toEqual({ ok: false, code: 'too-high' });
	});

	it('is in the unit of the display', () => {
		expect(walkingSpeed(3, 'mph')).toBeCloseTo(Qty('3 mph').to('m/min').scalar, 9);
		expect(walkingSpeed(6, 'km/h')).toBeCloseTo(Qty('6 km/h').to('m/min').scalar, 9);
		// 7.1 km/h is a run for most; 4.5 mph is 7.2 km/h.
		for (const unit of ['km/h', 'mph'] as const) expect(walkingSpeed(7.1, unit)).toBeNull();
		expect(walkingSpeed(4.5, 'mph')).toBeNull();
		expect(walkingSpeed(0.5, 'km/h')).toBeNull();
	});
});

describe('after a walk', () => {
	it('nobody goes faster whose talk got short, whatever the pulse', () => {
		fc.assert(
			fc.property(fc.integer({ min: 50, max: 230 }), (bpm) => {
				expect(afterWalk(false, bpm, null)).toBe('too-short-of-breath');
			})
		);
	});

	it('nobody goes faster at or over the limit of a care team', () => {
		expect(afterWalk(true, 119, 120)).toBe('go-on');
		expect(afterWalk(true, 120, 120)).toBe('at-the-limit');
		expect(afterWalk(true, 200, null)).toBe('go-on');
	});
});
