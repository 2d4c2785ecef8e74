import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedRange } from '$lib/guidance/allowed-range.ts';
import { guide } from '$lib/guidance/guide.ts';
import { runnerOuting } from '$lib/guidance/runner-outing.ts';
import { phasesOf, type Outing, type OutingPhase } from '$lib/outing/outing.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { longestRunNow } from '$lib/outing/settling-in.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import { anyOuting } from '../outing/any-outing.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

// Our own rules, no source.

const run: OutingPhase = {
	kind: 'steady-run',
	seconds: 50,
	target: { low: 0.5, high: 0.62 },
	speedKmh: 6.4,
	inclinePercent: 1,
	cue: 'Short steps'
};
const warmUp: OutingPhase = {
	...run,
	kind: 'warm-up-walk',
	seconds: 400,
	target: null,
	speedKmh: 5
};
const outing: Outing = { name: 'One', parts: [warmUp, { times: 3, phases: [run] }] };

function seen(access = wideOpen, profile = measured, days: readonly number[] = []) {
	const guidance = guide(access, profile, days);
	if (!guidance.open) throw new Error('closed');
	return runnerOuting(outing, access, guidance);
}

describe('an outing as one runner may do it', () => {
	test('is as it was written for who may run', () => {
		expect(seen()).toEqual({ outing, walksInstead: false, shortenedToSeconds: null });
	});

	test('has brisk walks of the same length, and nothing that was meant for a run, for who may walk', () => {
		const access = {
			...wideOpen,
			status: 'CLEARED_WALK',
			run: false,
			ceiling: 'moderate'
		} as const;
		const { outing: own, walksInstead } = seen(access);
		expect(walksInstead).toBe(true);
		expect(own.parts[0]).toEqual(warmUp);
		expect(phasesOf(own).slice(1)).toEqual(
			Array.from({ length: 3 }, () => ({
				kind: 'brisk-walk',
				seconds: 50,
				target: null,
				speedKmh: null,
				inclinePercent: null,
				cue: ''
			}))
		);
	});

	test('is walked until settling in is over', () => {
		const access = { ...wideOpen, startEffort: 'moderate' } as const;
		expect(seen(access).walksInstead).toBe(true);
		expect(seen(access, measured, [14, 11, 9, 6, 3, 1]).walksInstead).toBe(false);
	});

	test('has short runs at first after settling in, each from its own start', () => {
		const access = { ...wideOpen, startEffort: 'moderate' } as const;
		const settled = [14, 11, 9, 6, 3, 1];
		const cycle: Outing = {
			name: 'One',
			parts: [
				warmUp,
				{ times: 3, phases: [run, { ...warmUp, kind: 'recovery-walk', seconds: 110 }] }
			]
		};
		const own = (daysLater: number) => {
			const guidance = guide(
				access,
				measured,
				settled.map((days) => days + daysLater)
			);
			if (!guidance.open) throw new Error('closed');
			return runnerOuting(cycle, access, guidance);
		};
		expect(phasesOf(own(0).outing).map(({ seconds }) => seconds)).toEqual([
			400, 30, 130, 30, 130, 30, 130
		]);
		expect(own(0)).toMatchObject({ walksInstead: false, shortenedToSeconds: 30 });
		expect(phasesOf(own(0).outing)[1]).toMatchObject({ kind: 'steady-run', cue: 'Short steps' });
		expect(phasesOf(own(7).outing)[1]?.seconds).toBe(45);
		expect(own(14)).toMatchObject({ outing: cycle, shortenedToSeconds: null });
	});

	test('never has a run above what the weeks since settling in allow', () => {
		const anyWalks = fc.array(fc.integer({ min: 0, max: 80 }), { maxLength: 12 });
		fc.assert(
			fc.property(anyAccess, anyProfile, anyWalks, anyOuting, (access, profile, days, any) => {
				const guidance = guide(access, profile, days);
				if (!guidance.open || !access.allowed) return;
				const longest = outingTotals(runnerOuting(any, access, guidance).outing).longestRunSeconds;
				const walks = !guidance.mayRun || guidance.settlingIn.kind === 'going-on';
				const limit = walks ? 0 : (longestRunNow(guidance.settlingIn) ?? Infinity);
				expect(longest).toBeLessThanOrEqual(limit);
			})
		);
	});

	test('has no share of the reserve with pulse off', () => {
		const access = {
			...wideOpen,
			pulse: { on: false, reasons: ['H-RATE'], careTeamLimitBpm: null }
		} as const;
		expect(phasesOf(seen(access).outing).every(({ target }) => target === null)).toBe(true);
	});

	test('never asks for more than is open, nor for another length', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				const guidance = guide(access, profile, []);
				if (!guidance.open || !access.allowed) return;
				const own = phasesOf(runnerOuting(outing, access, guidance).outing);
				expect(own.map(({ seconds }) => seconds)).toEqual([400, 50, 50, 50]);
				for (const { kind, target } of own) {
					if (!guidance.mayRun) expect(phaseTargets[kind].gait).toBe('walk');
					const { highest } = allowedRange(access, guidance.settlingIn, kind).reserve;
					if (target !== null) expect(target.high).toBeLessThanOrEqual(highest);
				}
			})
		);
	});
});
