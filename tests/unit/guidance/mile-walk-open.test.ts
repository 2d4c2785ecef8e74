import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mileWalkOpen } from '$lib/guidance/mile-walk-open.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import { emptyProfile } from '$lib/guidance/profile.ts';
import { anyAccess, wideOpen } from './open-accesses.ts';

// Our own rules, no source; the ages are those of Kline 1987.

const opened = (access: typeof wideOpen) => mileWalkOpen(access, pulseBasis(access, emptyProfile));
const usual = { ...wideOpen, ageYears: 45 };

describe('the mile walk', () => {
	it('is open to whoever may run, is used to hard effort, and has an age that was measured', () => {
		expect(opened(usual)).toBe('open');
		expect(opened({ ...usual, ageYears: 29 })).toBe('outside-study');
		expect(opened({ ...usual, ageYears: 70 })).toBe('outside-study');
	});

	it('is not open to whoever may not run, starts at moderate, or has a limit', () => {
		expect(opened({ ...usual, run: false })).toBe('not-for-now');
		expect(opened({ ...usual, startEffort: 'moderate' })).toBe('not-for-now');
		expect(opened({ ...usual, ceiling: 'moderate' })).toBe('not-for-now');
		expect(opened({ ...usual, pulse: { on: true, careTeamLimitBpm: 190 } })).toBe(
			'care-team-limit'
		);
		const off = { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: null } as const;
		expect(opened({ ...usual, pulse: off })).toBe('pulse-off');
	});

	it('is off after two mornings out of range', () => {
		expect(mileWalkOpen(usual, { kind: 'off', reasons: ['H-REST'], careTeamLimitBpm: null })).toBe(
			'pulse-off'
		);
	});

	it('is never open to anybody whose effort is capped, whatever else is true', () => {
		fc.assert(
			fc.property(anyAccess, (access) => {
				if (opened(access) !== 'open') return;
				expect(access).toMatchObject({
					run: true,
					ceiling: 'vigorous',
					startEffort: 'vigorous',
					pulse: { on: true, careTeamLimitBpm: null }
				});
			})
		);
	});
});
