import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PulseBasis } from '$lib/guidance/pulse-basis.ts';
import { roughBeats, roughBeatsAt } from '$lib/guidance/rough-beats.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { ageMaximum } from '$lib/physiology/maximum.ts';
import { targetAtFraction } from '$lib/physiology/reserve.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';

type PulseOn = Extract<PulseBasis, { kind: 'on' }>;

const pulse = (restingBpm: number, ageYears: number, careTeamLimitBpm: number | null): PulseOn => ({
	kind: 'on',
	resting: { bpm: restingBpm, spreadBpm: 3, mornings: 1 } as PulseOn['resting'],
	maximum: ageMaximum(ageYears),
	careTeamLimitBpm
});

const anyPulse = fc
	.record({
		restingBpm: fc.integer({ min: 40, max: 90 }),
		ageYears: fc.integer({ min: 18, max: 85 }),
		careTeamLimitBpm: fc.option(fc.integer({ min: 95, max: 180 }))
	})
	.map(({ restingBpm, ageYears, careTeamLimitBpm }) =>
		pulse(restingBpm, ageYears, careTeamLimitBpm)
	);

const anyHighest = fc.constantFrom(0.4, 0.5, 0.55, 0.59, 0.62, 0.7);

describe('the rough beats of a band that is about to be set', () => {
	// Rest 68, maximum 175.8: 89.56, 100.34, 111.12, 121.90, 132.68, 143.46 (Karvonen 1957, Tanaka 2001).
	test('stand at every tenth that may be set, and where it ends', () => {
		expect(roughBeats(pulse(68, 46, null), 0.7)).toEqual([
			{ percent: 20, bpm: 90 },
			{ percent: 30, bpm: 100 },
			{ percent: 40, bpm: 110 },
			{ percent: 50, bpm: 120 },
			{ percent: 60, bpm: 135 },
			{ percent: 70, bpm: 145 }
		]);
		// 131.60 at 59 %.
		expect(roughBeats(pulse(68, 46, null), 0.59).slice(-2)).toEqual([
			{ percent: 50, bpm: 120 },
			{ percent: 59, bpm: 130 }
		]);
	});

	test('are reckoned between the points and nowhere else', () => {
		const points = roughBeats(pulse(68, 46, null), 0.59);
		expect(roughBeatsAt(points, 20)).toBe(90);
		expect(roughBeatsAt(points, 45)).toBe(115);
		expect(roughBeatsAt(points, 59)).toBe(130);
		expect(roughBeatsAt(points, 19)).toBeNull();
		expect(roughBeatsAt(points, 60)).toBeNull();
		expect(roughBeatsAt([], 50)).toBeNull();
	});

	test('never go over the care team’s limit, nor tell it', () => {
		fc.assert(
			fc.property(anyPulse, anyHighest, (on, highest) => {
				const points = roughBeats(on, highest);
				for (let percent = 20; percent <= Math.round(highest * 100); percent += 1) {
					const bpm = roughBeatsAt(points, percent) ?? 0;
					expect(bpm % 5).toBe(0);
					expect(bpm).toBeLessThanOrEqual(on.careTeamLimitBpm ?? Infinity);
				}
			})
		);
	});

	test('are at most five beats from what the band will be', () => {
		fc.assert(
			fc.property(anyPulse, anyHighest, (on, highest) => {
				const free = { ...on, careTeamLimitBpm: null };
				const points = roughBeats(free, highest);
				for (let percent = 20; percent <= Math.round(highest * 100); percent += 1) {
					const { bpm } = targetAtFraction(percent / 100, on.resting, on.maximum);
					expect(Math.abs((roughBeatsAt(points, percent) ?? 0) - bpm)).toBeLessThanOrEqual(5);
				}
			})
		);
	});

	// Which maxima fit what is seen is reckoned by trying them all (Karvonen 1957). Our own law.
	test('say less about the maximum, and so the age, than the bands that a coach sees anyway', () => {
		fc.assert(
			fc.property(anyPulse, (on) => {
				const open = (shares: readonly number[], stepBpm: number) =>
					maximaOpen(on, shares, stepBpm);
				const rough = open([0.2, 0.3, 0.4, 0.5, 0.6, 0.7], 5);
				const usualEdges = Object.values(phaseTargets).flatMap(({ reserve }) =>
					reserve.low === null ? [reserve.high] : [reserve.low, reserve.high]
				);
				expect(rough).toBeGreaterThan(open(usualEdges, 1));
			}),
			{ numRuns: 60 }
		);
	});
});

/** How far apart the maxima are, in beats, with which these shares would read the same. */
function maximaOpen({ resting, maximum }: PulseOn, shares: readonly number[], stepBpm: number) {
	const read = (restingBpm: number, maximumBpm: number) => (share: number) =>
		roundHalfUp((restingBpm + share * (maximumBpm - restingBpm)) / stepBpm, 0);
	const seen = shares.map(read(resting.bpm, maximum.bpm));
	const fitting: number[] = [];
	for (let off = -25; off <= 25; off += 0.25) {
		for (let restingOff = -25; restingOff <= 25; restingOff += 0.25) {
			const would = read(resting.bpm + restingOff, maximum.bpm + off);
			if (shares.every((share, at) => would(share) === seen[at])) fitting.push(off);
		}
	}
	return Math.max(...fitting) - Math.min(...fitting);
}
