import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guide } from '$lib/guidance/guide.ts';
import { workedBand } from '$lib/guidance/worked-band.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

function workedOf(access = wideOpen, profile = measured) {
	const guidance = guide(access, profile, []);
	if (!guidance.open) throw new Error('the gate is closed');
	return guidance.phases.map((phase) => ({
		phase,
		worked: workedBand(phase, guidance.pulse)
	}));
}

describe('a band worked out step by step', () => {
	// Age 46, resting 68: 208 - 0.7 x 46 = 175.8 (Tanaka 2001), reserve 107.8; 50 % of it is 53.9 and
	// 62 % 66.836 (Karvonen 1957). Doubts 3 and 11.4: 0.38 x 3 = 1.14, 0.62 x 11.4 = 7.068, and the
	// root of the sum of their squares is 7.1593. Worked out on paper.
	test('is that of the paper for a woman of 46', () => {
		const run = workedOf().find(({ phase }) => phase.kind === 'steady-run')?.worked;
		expect(run?.reserveBpm).toBeCloseTo(107.8, 9);
		expect(run?.low?.ofReserveBpm).toBeCloseTo(53.9, 9);
		expect(run?.low?.bpm).toBeCloseTo(121.9, 9);
		expect(run?.high.bpm).toBeCloseTo(134.836, 9);
		expect(run?.high.restingDoubtBpm).toBeCloseTo(1.14, 9);
		expect(run?.high.maximumDoubtBpm).toBeCloseTo(7.068, 9);
		expect(run?.high.spreadBpm).toBeCloseTo(7.1593, 4);
	});

	test('with pulse off has no step at all', () => {
		const off = {
			...wideOpen,
			pulse: { on: false as const, reasons: ['H-MEDS'], careTeamLimitBpm: 110 }
		};
		expect(workedOf(off).map(({ worked }) => worked)).toEqual(workedOf(off).map(() => null));
	});

	test('without a resting pulse has none either', () => {
		const worked = workedOf(wideOpen, { ...measured, mornings: [] });
		expect(worked.every((one) => one.worked === null)).toBe(true);
	});

	test('ends at the band that the runner sees, a limit of the care team included', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				for (const { phase, worked } of workedOf(access, profile)) {
					expect(worked === null).toBe(phase.pulse === null);
					if (worked === null || phase.pulse === null) continue;
					const { low, high, cutByCareTeam } = phase.pulse;
					expect(worked.limitBpm ?? worked.high.bpm).toBeCloseTo(high.bpm, 9);
					expect(worked.limitBpm !== null).toBe(cutByCareTeam);
					if (low) expect(worked.low?.bpm).toBeCloseTo(low.bpm, 9);
				}
			})
		);
	});
});
