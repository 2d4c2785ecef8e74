import { expect, test } from 'vitest';
import { pulseBand } from '$lib/guidance/pulse-band.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import { pulseShares } from '$lib/guidance/pulse-shares.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { measured, wideOpen } from './open-accesses.ts';

const basis = pulseBasis(wideOpen, measured);
if (basis.kind !== 'on') throw new Error('pulse is on');

// Rest 68, maximum 175.8: one beat is 1/107.8 of the reserve (Karvonen 1957). The spreads of the
// two edges are 5.894 and 7.159 beats.
test('the edges of a band are the shares that it was made from, with their doubt', () => {
	const shares = pulseShares(pulseBand(phaseTargets['steady-run'], basis), basis);
	expect(shares.low).toBeCloseTo(0.5, 10);
	expect(shares.high).toBeCloseTo(0.62, 10);
	expect(shares.lowSpread).toBeCloseTo(5.894 / 107.8, 4);
	expect(shares.highSpread).toBeCloseTo(7.159 / 107.8, 4);
});

test('a band that is "anything under" has no low share', () => {
	const shares = pulseShares(pulseBand(phaseTargets['cool-down-walk'], basis), basis);
	expect(shares).toMatchObject({ low: null, lowSpread: null });
});

// 130 beats: (130 - 68) / 107.8.
test('a limit of the care team is where it is, and sure', () => {
	const cut = { ...basis, careTeamLimitBpm: 130 };
	const shares = pulseShares(pulseBand(phaseTargets['steady-run'], cut), cut);
	expect(shares.high).toBeCloseTo(62 / 107.8, 10);
	expect(shares.highSpread).toBe(0);
});
