import { describe, expect, test } from 'vitest';
import { pulseBand, pulseBandIfMaximumIs } from '$lib/guidance/pulse-band.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { measured, wideOpen } from './open-accesses.ts';

const run = phaseTargets['steady-run'];

function basisOn(profile = measured, access = wideOpen) {
	const basis = pulseBasis(access, profile);
	if (basis.kind !== 'on') throw new Error(`pulse is ${basis.kind}`);
	return basis;
}

describe('what pulse is reckoned from', () => {
	test('nothing measured: not yet', () => {
		const profile = { ...measured, mornings: [] };
		expect(pulseBasis(wideOpen, profile)).toMatchObject({ kind: 'not-yet', why: 'not-known' });
	});

	test('one morning outside 40 to 100: measure again', () => {
		const profile = { ...measured, mornings: [104] };
		expect(pulseBasis(wideOpen, profile)).toMatchObject({ kind: 'not-yet', why: 'measure-again' });
	});

	test('a limit of a care team counts whatever is known of the pulse: nothing, something, all', () => {
		const access = { ...wideOpen, pulse: { ...wideOpen.pulse, careTeamLimitBpm: 120 } };
		for (const mornings of [[], [104], [104, 103], measured.mornings]) {
			expect(pulseBasis(access, { ...measured, mornings })).toMatchObject({
				careTeamLimitBpm: 120
			});
		}
		const noReserve = { ...measured, mornings: [95], supervisedMaximumBpm: 110 };
		expect(pulseBasis(access, noReserve)).toMatchObject({ careTeamLimitBpm: 120 });
	});

	test('two mornings outside 40 to 100: off until advice', () => {
		const profile = { ...measured, mornings: [104, 103] };
		expect(pulseBasis(wideOpen, profile)).toMatchObject({ kind: 'off', reasons: ['H-REST'] });
	});

	test('advice that covers it makes this pulse the runner’s own', () => {
		const access = { ...wideOpen, coveredReasons: ['H-REST'] };
		const profile = { ...measured, mornings: [104, 102] };
		expect(pulseBasis(access, profile)).toMatchObject({ kind: 'on', resting: { bpm: 103 } });
	});

	test('age 46 predicts 208 - 0.7 x 46 = 175.8, give or take 11.4 (Tanaka 2001, Sarzynski 2013)', () => {
		const { maximum } = basisOn();
		expect(maximum.bpm).toBeCloseTo(175.8, 10);
		expect(maximum).toMatchObject({ spreadBpm: 11.4, basis: 'age' });
	});

	test('a supervised maximum replaces age', () => {
		const { maximum } = basisOn({ ...measured, supervisedMaximumBpm: 171 });
		expect(maximum).toMatchObject({ bpm: 171, basis: 'supervised-test' });
	});

	test('a maximum that leaves no reserve gives no numbers', () => {
		const profile = { ...measured, mornings: [95], supervisedMaximumBpm: 110 };
		expect(pulseBasis(wideOpen, profile)).toMatchObject({ kind: 'not-yet', why: 'measure-again' });
	});
});

describe('the pulse band of a phase', () => {
	// Rest 68, maximum 175.8, reserve 107.8 (Karvonen 1957): 50 % is 121.9, 62 % is 134.836.
	test('is resting plus the share of reserve, unrounded', () => {
		const band = pulseBand(run, basisOn());
		expect(band.low?.bpm).toBeCloseTo(121.9, 10);
		expect(band.high.bpm).toBeCloseTo(134.836, 10);
		expect(band.high.count15).toBeCloseTo(33.709, 10);
	});

	// sqrt(0.38^2 x 3^2 + 0.62^2 x 11.4^2) = 7.1593, and at the lower edge sqrt(2.25 + 32.49) = 5.894.
	test('carries the doubt of both ends, more of it towards the maximum', () => {
		const band = pulseBand(run, basisOn());
		expect(band.low?.spreadBpm).toBeCloseTo(5.894, 3);
		expect(band.high.spreadBpm).toBeCloseTo(7.159, 3);
	});

	test('moves by five to six beats when the maximum is ten off', () => {
		const less = pulseBandIfMaximumIs(-10, run, basisOn());
		expect(less.low?.bpm).toBeCloseTo(116.9, 10);
		expect(less.high.bpm).toBeCloseTo(128.636, 10);
	});

	test('is cut by a limit of the care team', () => {
		const basis = { ...basisOn(), careTeamLimitBpm: 130 };
		expect(pulseBand(run, basis)).toMatchObject({ high: { bpm: 130 }, cutByCareTeam: true });
	});

	test('becomes "anything under" when the limit lies below it', () => {
		const basis = { ...basisOn(), careTeamLimitBpm: 115 };
		expect(pulseBand(run, basis)).toMatchObject({ low: null, high: { bpm: 115 } });
	});

	test('keeps its own edge when the limit lies above it', () => {
		const basis = { ...basisOn(), careTeamLimitBpm: 150 };
		expect(pulseBand(run, basis).cutByCareTeam).toBe(false);
	});
});
