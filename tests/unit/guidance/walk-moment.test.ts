import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHECK_WALK_SECONDS, walkMoment } from '$lib/guidance/walk-moment.ts';

// Our own rules, no source.

const START = Date.UTC(2026, 10, 25, 18);
const after = (seconds: number) => walkMoment(START, START + seconds * 1000);

describe('where a timed walk is', () => {
	it('is not known when the clock was set back', () => {
		expect(walkMoment(START, START - 1)).toEqual({ kind: 'not-known' });
		expect(walkMoment(START, NaN)).toEqual({ kind: 'not-known' });
	});

	it('leads from walking to finding the pulse, to counting for 15 seconds, to its end', () => {
		expect(after(0)).toEqual({ kind: 'walk', leftSeconds: 180 });
		expect(after(134)).toEqual({ kind: 'walk', leftSeconds: 46 });
		expect(after(135)).toEqual({ kind: 'find-pulse', leftSeconds: 45 });
		expect(after(164.9)).toEqual({ kind: 'find-pulse', leftSeconds: 16 });
		expect(after(165)).toEqual({ kind: 'count', leftSeconds: 15 });
		expect(after(179.9)).toEqual({ kind: 'count', leftSeconds: 1 });
		expect(after(180)).toEqual({ kind: 'over', isLate: false });
		expect(after(240)).toEqual({ kind: 'over', isLate: false });
		expect(after(241)).toEqual({ kind: 'over', isLate: true });
	});

	it('never goes back, however seldom the clock is looked at', () => {
		const order = ['walk', 'find-pulse', 'count', 'over'];
		fc.assert(
			fc.property(fc.nat(300_000), fc.nat(300_000), (one, more) => {
				const [first, second] = [
					walkMoment(START, START + one),
					walkMoment(START, START + one + more)
				];
				expect(order.indexOf(second.kind)).toBeGreaterThanOrEqual(order.indexOf(first.kind));
				if ('leftSeconds' in first) {
					expect(first.leftSeconds).toBeGreaterThan(0);
					expect(first.leftSeconds).toBeLessThanOrEqual(CHECK_WALK_SECONDS);
				}
			})
		);
	});
});
