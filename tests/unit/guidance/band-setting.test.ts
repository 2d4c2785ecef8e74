import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedRange, phaseRange } from '$lib/guidance/allowed-range.ts';
import { applySetting, isBandSetting, type BandSetting } from '$lib/guidance/band-setting.ts';
import { phaseKinds, phaseTargets } from '$lib/outing/phase.ts';
import type { SettlingIn } from '$lib/outing/settling-in.ts';
import { intensityOf } from '$lib/physiology/intensity.ts';
import { anySetting } from './any-setting.ts';
import { anyAccess, wideOpen } from './open-accesses.ts';

// Our own limits, common practice, no source, but where a source is named.

const settled: SettlingIn = { kind: 'done', longestRunSeconds: null };
const goingOn: SettlingIn = { kind: 'going-on', walksDone: 0, walksNeeded: 6, daysLeft: 14 };
const anySettling = fc.constantFrom<SettlingIn>({ kind: 'not-needed' }, settled, goingOn);
const run = phaseTargets['steady-run'];
const setting: BandSetting = {
	lowFraction: 0.5,
	highFraction: 0.6,
	effortLow: 5,
	effortHigh: 6
};

describe('numbers that make no band', () => {
	test.each([
		['an upper edge under the lower', { highFraction: 0.4 }],
		['edges closer than 5 % of reserve', { highFraction: 0.54 }],
		['a low edge under a fifth of reserve', { lowFraction: 0.19 }],
		['more than the whole reserve', { highFraction: 1.01 }],
		['not a number', { highFraction: NaN }],
		['effort upside down', { effortLow: 6, effortHigh: 5 }],
		['half a step of effort', { effortLow: 4.5 }],
		['the effort of sitting', { effortLow: 0 }],
		['more effort than there is', { effortHigh: 11 }]
	])('%s', (_, changed) => {
		const wrong = { ...setting, ...changed };
		expect(isBandSetting(wrong)).toBe(false);
		expect(() => applySetting(run, wrong, wideOpen, settled)).toThrow('requires a band');
	});

	test('5 % wide is a band, and so is anything under 25 %', () => {
		expect(isBandSetting({ ...setting, lowFraction: 0.55 })).toBe(true);
		expect(isBandSetting({ ...setting, lowFraction: null, highFraction: 0.25 })).toBe(true);
	});
});

describe('how far a phase may be raised', () => {
	test.each(phaseKinds)('%s: its usual band is inside', (phase) => {
		const { reserve, effort } = phaseRange(phase);
		expect(reserve.highest).toBeGreaterThanOrEqual(phaseTargets[phase].reserve.high);
		expect(effort.highest).toBeGreaterThanOrEqual(phaseTargets[phase].effort.high);
	});

	// The classes are those of Garber 2011; an upper edge is what is not to be passed, so the class
	// is that of just under it.
	test.each(phaseKinds)('%s: it stays in the class of its usual upper edge', (phase) => {
		const classUnder = (fraction: number) => intensityOf('reservePercent', fraction * 100 - 0.1);
		const usual = classUnder(phaseTargets[phase].reserve.high);
		expect(classUnder(phaseRange(phase).reserve.highest)).toBe(usual);
	});

	test('nothing is above effort 6, because 7 means ease off', () => {
		for (const phase of phaseKinds) {
			expect(phaseRange(phase).effort.highest).toBeLessThanOrEqual(6);
		}
	});

	test('a run that is open ends at 70 % because of the phase', () => {
		expect(allowedRange(wideOpen, settled, 'steady-run')).toEqual({
			reserve: { highest: 0.7, because: 'phase' },
			effort: { highest: 6, because: 'phase' }
		});
	});

	test('at a moderate ceiling a run ends under 60 % because of screening', () => {
		const access = { ...wideOpen, ceiling: 'moderate' } as const;
		expect(allowedRange(access, settled, 'steady-run').reserve).toEqual({
			highest: 0.59,
			because: 'screening'
		});
		expect(allowedRange(wideOpen, goingOn, 'steady-run').reserve.because).toBe('screening');
	});

	test('after settling in a run is not raised above its usual 62 %', () => {
		const access = { ...wideOpen, startEffort: 'moderate' } as const;
		expect(allowedRange(access, settled, 'steady-run').reserve).toEqual({
			highest: 0.62,
			because: 'screening'
		});
	});
});

describe('a setting put to use', () => {
	test('inside what is open it is taken as it is', () => {
		const { target, cuts } = applySetting(run, setting, wideOpen, settled);
		expect(target).toEqual({
			...run,
			reserve: { low: 0.5, high: 0.6 },
			effort: { low: 5, high: 6 }
		});
		expect(cuts).toEqual([]);
	});

	test('beyond it, it says where and why it was cut', () => {
		const access = { ...wideOpen, ceiling: 'moderate' } as const;
		const hard = { lowFraction: 0.65, highFraction: 0.75, effortLow: 7, effortHigh: 8 };
		const { target, cuts } = applySetting(run, hard, access, settled);
		expect(target.reserve).toEqual({ low: 0.54, high: 0.59 });
		expect(target.effort).toEqual({ low: 6, high: 6 });
		expect(cuts).toEqual([
			{ where: 'reserve', because: 'screening', wanted: 0.75, highest: 0.59 },
			{ where: 'effort', because: 'phase', wanted: 8, highest: 6 }
		]);
	});

	test('what was set before screening became stricter is cut, never wider and never harder', () => {
		fc.assert(
			fc.property(
				anySetting,
				anyAccess,
				anySettling,
				fc.constantFrom(...phaseKinds),
				(wanted, access, settling, phase) => {
					const before = applySetting(phaseTargets[phase], wanted, wideOpen, settled).target;
					const { target } = applySetting(phaseTargets[phase], wanted, access, settling);
					const width = ({ reserve: { low, high } }: typeof target) => high - (low ?? 0);
					expect(target.reserve.high).toBeLessThanOrEqual(before.reserve.high);
					expect(target.reserve.low ?? 0).toBeLessThanOrEqual(before.reserve.low ?? 0);
					expect(width(target)).toBeLessThanOrEqual(width(before) + 1e-9);
					expect(target.effort.high).toBeLessThanOrEqual(before.effort.high);
					expect(target.effort.low).toBeLessThanOrEqual(target.effort.high);
				}
			)
		);
	});

	test('where nothing was cut nothing is said, and the other way round', () => {
		fc.assert(
			fc.property(anySetting, anyAccess, anySettling, (wanted, access, settling) => {
				const { target, cuts } = applySetting(run, wanted, access, settling);
				const isCut =
					target.reserve.high < wanted.highFraction || target.effort.high < wanted.effortHigh;
				expect(cuts.length > 0).toBe(isCut);
			})
		);
	});
});
