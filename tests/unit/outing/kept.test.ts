import { describe, expect, it } from 'vitest';
import { grantState } from '$lib/outing/kept.ts';

/* Our own rule, no source: shown until the grant's end, and not at all once a clock was set back. */

const DAY = 24 * 60 * 60 * 1000;
const grant = { grantEndsAt: 14 * DAY };

describe('a grant', () => {
	it('holds until its last moment and not in it', () => {
		expect(grantState(grant, 0, 14 * DAY - 1)).toBe('open');
		expect(grantState(grant, 0, 14 * DAY)).toBe('ended');
	});

	it('is closed by a clock that was set back, before its end and after it', () => {
		expect(grantState(grant, 10 * DAY, 9 * DAY)).toBe('clock-set-back');
		expect(grantState(grant, 20 * DAY, 9 * DAY)).toBe('clock-set-back');
	});

	it('bears a clock that corrects itself, but not past the end', () => {
		expect(grantState(grant, DAY, DAY - 1000)).toBe('open');
		expect(grantState(grant, 14 * DAY, 14 * DAY - 1000)).toBe('ended');
	});

	it('is closed where the time is not known', () => {
		expect(grantState(grant, 0, Number.NaN)).toBe('clock-set-back');
	});
});
