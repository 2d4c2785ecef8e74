import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guide } from '$lib/guidance/guide.ts';
import { emptyProfile } from '$lib/guidance/profile.ts';
import { closed } from '$lib/screening/closed-access.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

const kinds = (guidance: ReturnType<typeof guide>) =>
	guidance.open ? guidance.phases.map(({ kind }) => kind) : [];

describe('a closed gate', () => {
	test.each(['NO_RESULT', 'WAIT', 'SEEK_ADVICE', 'EMERGENCY', 'EXPIRED', 'RESCREEN'] as const)(
		'%s gives the code and not one number',
		(code) => {
			const guidance = guide(closed(code), measured, []);
			expect(guidance).toEqual({ open: false, code });
			expect(JSON.stringify(guidance)).not.toMatch(/\d/);
		}
	);
});

describe('which phases there are', () => {
	test('may run: runs with walks between', () => {
		expect(kinds(guide(wideOpen, emptyProfile, []))).toEqual([
			'warm-up-walk',
			'steady-run',
			'recovery-walk',
			'cool-down-walk'
		]);
	});

	test('may walk: every run is a brisk walk', () => {
		const access = {
			...wideOpen,
			status: 'CLEARED_WALK',
			run: false,
			ceiling: 'moderate'
		} as const;
		expect(kinds(guide(access, emptyProfile, []))).toEqual([
			'warm-up-walk',
			'brisk-walk',
			'cool-down-walk'
		]);
	});

	test('may run: a brisk walk in an outing has its band too, 40 to 59 % of reserve (Garber 2011)', () => {
		const guidance = guide(wideOpen, emptyProfile, []);
		if (!guidance.open) throw new Error('an open access stays open');
		expect(guidance.others.map(({ kind, reserve }) => ({ kind, reserve }))).toEqual([
			{ kind: 'brisk-walk', reserve: { low: 0.4, high: 0.59 } }
		]);
		for (const access of [
			{ ...wideOpen, run: false },
			{ ...wideOpen, startEffort: 'moderate' }
		] as const) {
			const walking = guide(access, emptyProfile, []);
			expect(walking.open && walking.others).toEqual([]);
		}
	});

	test('settling in: no run until six walks over two weeks', () => {
		const access = { ...wideOpen, startEffort: 'moderate' } as const;
		expect(kinds(guide(access, emptyProfile, []))).not.toContain('steady-run');
		expect(kinds(guide(access, emptyProfile, [13, 11, 9, 6, 3, 1]))).not.toContain('steady-run');
		expect(kinds(guide(access, emptyProfile, [14, 11, 9, 6, 3, 1]))).toContain('steady-run');
	});
});

describe('for everybody', () => {
	test('pulse off leaves no beat anywhere but the care team’s own limit', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				fc.pre(!access.pulse.on);
				const guidance = guide(access, profile, []);
				if (!guidance.open) throw new Error('an open access stays open');
				expect(guidance.phases.every(({ pulse }) => pulse === null)).toBe(true);
				expect(guidance.phases.every(({ reserve }) => reserve === null)).toBe(true);
				expect(guidance.pulse).toEqual({
					kind: 'off',
					reasons: ['H-MEDS'],
					careTeamLimitBpm: access.pulse.careTeamLimitBpm
				});
			})
		);
	});

	test('moderate is never passed where screening says moderate, or while settling in', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				fc.pre(access.ceiling === 'moderate' || access.startEffort === 'moderate');
				const guidance = guide(access, profile, []);
				if (!guidance.open) throw new Error('an open access stays open');
				for (const { pulse, effort, kind } of guidance.phases) {
					expect(kind).not.toBe('steady-run');
					expect(effort.high).toBeLessThanOrEqual(6);
					if (pulse !== null) expect(pulse.high.fraction).toBeLessThan(0.6);
				}
			})
		);
	});

	test('no band passes a limit of the care team', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				const limit = access.pulse.careTeamLimitBpm;
				fc.pre(access.pulse.on && limit !== null);
				const guidance = guide(access, profile, []);
				if (!guidance.open) throw new Error('an open access stays open');
				for (const { pulse } of guidance.phases) {
					if (pulse === null) continue;
					expect(pulse.high.bpm).toBeLessThanOrEqual(limit);
					if (pulse.low !== null) expect(pulse.low.bpm).toBeLessThan(pulse.high.bpm);
				}
			})
		);
	});

	test('bands lie between resting and maximum, low before high', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				const guidance = guide(access, profile, []);
				if (!guidance.open) throw new Error('an open access stays open');
				if (guidance.pulse.kind !== 'on') return;
				const { resting, maximum, careTeamLimitBpm } = guidance.pulse;
				for (const { pulse } of guidance.phases) {
					if (pulse === null) throw new Error('a pulse that is on gives a band');
					expect(pulse.high.bpm).toBeLessThan(maximum.bpm);
					if (careTeamLimitBpm === null) expect(pulse.high.bpm).toBeGreaterThan(resting.bpm);
					if (pulse.low !== null) expect(pulse.low.bpm).toBeGreaterThan(resting.bpm);
				}
			})
		);
	});
});
