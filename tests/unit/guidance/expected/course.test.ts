import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseOf } from '$lib/guidance/expected/course.ts';
import { gentleStart } from '$lib/guidance/expected/gentle-start.ts';
import { emptyProfile } from '$lib/guidance/profile.ts';
import { closed } from '$lib/screening/closed-access.ts';
import { anyAccess, anyProfile, measured, wideOpen } from '../open-accesses.ts';
import { courseWith } from './any-course.ts';

// Our own rules, no source, but where a source is named.

const sixWalks = [14, 11, 9, 6, 3, 1];

describe('no course', () => {
	test('behind a closed gate there is no number', () => {
		const course = courseOf(closed('SEEK_ADVICE'), measured, []);
		expect(course).toEqual({ kind: 'no-course', why: 'closed' });
	});

	test('with pulse off none is drawn, whatever is known', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				fc.pre(!access.pulse.on);
				expect(courseOf(access, profile, [])).toEqual({ kind: 'no-course', why: 'pulse-off' });
			})
		);
	});

	test('without a resting pulse none can be', () => {
		expect(courseOf(wideOpen, emptyProfile, [])).toEqual({
			kind: 'no-course',
			why: 'pulse-not-known'
		});
	});

	test('it holds no beat and no age', () => {
		const text = JSON.stringify(courseOf({ ...wideOpen, ageYears: 47 }, measured, []));
		expect(text).not.toMatch(/\b(47|68|175)\b/);
	});
});

describe('what a runner may be asked', () => {
	test('may walk: no run, and nothing above 59 % (under vigorous, Garber 2011)', () => {
		const course = courseWith(null, { run: false, ceiling: 'moderate', status: 'CLEARED_WALK' });
		expect(course.runs).toBe(false);
		expect(course.top).toEqual({ share: 0.59, because: 'moderate' });
		for (const { high } of Object.values(course.ranges)) expect(high).toBeLessThanOrEqual(0.59);
	});

	test('settling in: the same until six walks over two weeks, then runs under 80 %', () => {
		const start = { startEffort: 'moderate' } as const;
		const settling = courseWith(null, start, [13, 2]);
		expect(settling).toMatchObject({ runs: false, top: { share: 0.59, because: 'moderate' } });
		expect(courseWith(null, start, sixWalks)).toMatchObject({
			runs: true,
			top: { share: 0.8, because: 'first-weeks' }
		});
		expect(courseWith(null, start, [56, ...sixWalks])).toMatchObject({ runs: true, top: null });
	});

	test('whoever needs no settling in has only the ranges', () => {
		expect(courseWith(null)).toMatchObject({ runs: true, top: null });
	});

	// Rest 70, maximum 180: 125 is the half of the reserve, 92 a fifth of it.
	test('a limit of the care team cuts each range, and under a range makes it anything under', () => {
		const half = courseWith(null, { pulse: { on: true, careTeamLimitBpm: 125 } });
		expect(half.ranges['steady-run']).toEqual({ low: null, high: 0.5 });
		expect(half.ranges['brisk-walk']).toEqual({ low: 0.4, high: 0.5 });
		expect(half.ranges['warm-up-walk']).toEqual({ low: 0.3, high: 0.45 });
		const rest = courseWith(null, { pulse: { on: true, careTeamLimitBpm: 60 } });
		expect(rest.ranges['steady-run']).toEqual({ low: null, high: 0 });
	});
});

describe('the first weeks', () => {
	test('begin with the first walk and last 56 days', () => {
		expect(gentleStart(true, [])).toBe(0.8);
		expect(gentleStart(true, [55])).toBe(0.8);
		expect(gentleStart(true, [56, 0])).toBeNull();
		expect(gentleStart(false, [])).toBeNull();
	});

	test('a walk in the future is a mistake of the caller', () => {
		expect(() => gentleStart(true, [-1])).toThrow(RangeError);
	});
});
