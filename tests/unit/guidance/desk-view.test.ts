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
	// Rest 68, maximum 175.8: 50 % is 121.9, 62 % is 134.836 (Karvonen 1957, Tanaka 2001).
	test('has the beats at each per cent of the reserve', () => {
		const { bpmByPercent, pulse } = desk(wideOpen, measured);
		expect(pulse).toBe('on');
		expect(bpmByPercent?.[50]).toBe(122);
		expect(bpmByPercent?.[62]).toBe(135);
		expect(bpmByPercent).toHaveLength(101);
	});

	test('never goes over the care team’s limit', () => {
		const limited: OpenAccess = { ...wideOpen, pulse: { on: true, careTeamLimitBpm: 130 } };
		expect(desk(limited, measured).bpmByPercent?.[62]).toBe(130);
	});

	test('with pulse off there is no beat, no reason and not even the care team’s limit', () => {
		const view = desk(off, measured);
		expect(view).toMatchObject({ pulse: 'off', bpmByPercent: null });
		expect(JSON.stringify(view)).not.toMatch(/bpm":\d|H-MEDS|117/);
	});

	test('before the resting pulse is known there is no beat', () => {
		expect(desk(wideOpen, { ...measured, mornings: [] })).toMatchObject({
			pulse: 'not-yet',
			bpmByPercent: null
		});
	});

	test('for nobody does it hold reasons, care notes, age, resting pulse or maximum', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, anyEntries, (access, profile, entries) => {
				const view = desk(access, profile, entries);
				expect(Object.keys(view).sort()).toEqual([
					'bpmByPercent',
					'mayRun',
					'phases',
					'pulse',
					'settlingIn'
				]);
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
