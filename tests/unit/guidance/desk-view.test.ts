import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deskView } from '$lib/guidance/desk-view.ts';
import { guide } from '$lib/guidance/guide.ts';
import type { RunnerProfile } from '$lib/guidance/profile.ts';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import { anyEntries } from './any-setting.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

function desk(
	access: OpenAccess,
	profile: RunnerProfile,
	entries: Parameters<typeof guide>[3] = []
) {
	const guidance = guide(access, profile, [], entries);
	if (!guidance.open) throw new Error('an open access stays open');
	return deskView(access, guidance);
}

const off: OpenAccess = {
	...wideOpen,
	pulse: { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: 117 }
};

describe('what a coach sees of a runner’s bands', () => {
	test('has rough beats over the range that may be set, and no line beyond it', () => {
		const { phases, pulse } = desk(wideOpen, measured);
		expect(pulse).toBe('on');
		for (const { allowed, roughBeats } of phases) {
			expect(roughBeats?.[0]?.percent).toBe(20);
			expect(roughBeats?.at(-1)?.percent).toBe(Math.round(allowed.reserve.highest * 100));
		}
	});

	// All digits of how wide an edge's spread is would tell the reserve: it is a known share of it.
	test('draws its picture from hundredths', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, anyEntries, (access, profile, entries) => {
				const drawn = desk(access, profile, entries).phases.flatMap(({ shares }) =>
					Object.values(shares ?? {}).filter((share): share is number => share !== null)
				);
				for (const share of drawn) expect(share).toBe(Number(share.toFixed(2)));
			})
		);
	});

	test('with pulse off there is no beat, no reason and not even the care team’s limit', () => {
		const view = desk(off, measured);
		expect(view).toMatchObject({ pulse: 'off' });
		expect(view.phases.every(({ roughBeats }) => roughBeats === null)).toBe(true);
		expect(JSON.stringify(view)).not.toMatch(/bpm":\d|H-MEDS|117/);
	});

	test('before the resting pulse is known there is no beat', () => {
		const view = desk(wideOpen, { ...measured, mornings: [] });
		expect(view.pulse).toBe('not-yet');
		expect(view.phases.every(({ roughBeats }) => roughBeats === null)).toBe(true);
	});

	test('for nobody does it hold reasons, care notes, age, resting pulse or maximum', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, anyEntries, (access, profile, entries) => {
				const view = desk(access, profile, entries);
				expect(Object.keys(view).sort()).toEqual(['mayRun', 'phases', 'pulse', 'settlingIn']);
				expect(view.phases.every(({ shares }) => (shares === null) === (view.pulse !== 'on'))).toBe(
					true
				);
			})
		);
	});

	test('no phase is above how far it may be raised', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, anyEntries, (access, profile, entries) => {
				for (const { allowed, effort, pulse } of desk(access, profile, entries).phases) {
					expect(effort.high).toBeLessThanOrEqual(allowed.effort.highest);
					if (pulse) expect(pulse.high.fraction).toBeLessThanOrEqual(allowed.reserve.highest);
				}
			})
		);
	});
});
