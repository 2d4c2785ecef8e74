import { describe, expect, test } from 'vitest';
import { expectedOuting } from '$lib/guidance/expected/expected-outing.ts';
import { programmeStart } from '$lib/guidance/expected/programme-start.ts';
import { programmeTable } from '$lib/guidance/expected/programme-table.ts';
import { unknownPulse } from '$lib/outing/programme/wishes.ts';
import { plainWishes, weeksOf } from '../../outing/programme/any-wishes.ts';
import { courseWith } from './any-course.ts';

const none = { kind: 'no-course', why: 'pulse-off' } as const;
const walker = courseWith(30, { run: false, ceiling: 'moderate' });

describe('what a programme begins with', () => {
	test('where nobody’s capacity is known: runs of 30 s and the usual slow run', () => {
		expect(programmeStart([none, walker, courseWith(null)])).toEqual({
			firstRunSeconds: 30,
			settlingIn: false,
			pulse: unknownPulse,
			runnersKnown: 0
		});
	});

	// Capacity 30: a run of 5 km/h takes 16.667 of a reserve of 26.5, or 62.9 %; a walk of 4.5 km/h
	// 28.3 % (ACSM equations). From 50 % it passes 62 % after 57.6 ln(0.1289 / 0.0089) = 153 s, and
	// first runs are no longer than a minute.
	// Capacity 24: 81.3 %; 57.6 ln(0.313 / 0.193) = 27.9 s (Hunt 2015; computed).
	test('is that of the middle runner, of two the weaker, up to a minute', () => {
		expect(programmeStart([courseWith(30), courseWith(50)])).toEqual({
			firstRunSeconds: 60,
			settlingIn: false,
			pulse: {
				runShare: expect.closeTo(0.62893, 5),
				walkShare: expect.closeTo(0.28302, 5),
				staysInBand: 'no'
			},
			runnersKnown: 2
		});
		expect(programmeStart([courseWith(24), walker, none]).firstRunSeconds).toBe(25);
		expect(programmeStart([courseWith(50)])).toMatchObject({
			firstRunSeconds: 60,
			pulse: { staysInBand: 'yes' }
		});
	});

	test('is never under 20 s, and settles in where one of them does', () => {
		const weak = courseWith(19, { startEffort: 'moderate' });
		expect(programmeStart([weak])).toMatchObject({ firstRunSeconds: 20, settlingIn: true });
	});
});

describe('the weeks of a programme', () => {
	const weeks = weeksOf(plainWishes);

	test('without a curve there is no number', () => {
		expect(programmeTable(weeks, [none])[0]).toEqual({
			number: 1,
			runners: 0,
			withoutEstimate: 0,
			peakShare: null,
			meanShare: null
		});
	});

	test('of one runner have the highest peak of their outings, and the mean over all their time', () => {
		const course = courseWith(35);
		const week = weeks[5]!;
		const outings = week.outings.map(({ outing }) => {
			const answer = expectedOuting(course, outing, 60);
			if (answer.kind !== 'expected') throw new Error(answer.kind);
			return answer;
		});
		const row = programmeTable(weeks, [course])[5]!;
		expect(row.runners).toBe(1);
		expect(row.peakShare).toBeCloseTo(Math.max(...outings.map(({ peak }) => peak.share)), 12);
		const seconds = outings.map(({ points }) => points.at(-1)!.seconds);
		const area = outings.reduce((sum, { mean }, nth) => sum + mean.share * seconds[nth]!, 0);
		expect(row.meanShare).toBeCloseTo(area / seconds.reduce((one, other) => one + other), 12);
	});

	test('of walkers stay at moderate', () => {
		for (const { peakShare } of programmeTable(weeks, [walker])) {
			expect(peakShare).toBeLessThanOrEqual(0.59);
		}
	});

	test('of whoever settles in now, or settled in not long ago, have the runs that are to come', () => {
		const gentle = { startEffort: 'moderate' } as const;
		const settling = courseWith(30, gentle, [3]);
		const settled = courseWith(30, gentle, [14, 12, 9, 6, 3, 1]);
		expect([settling.runs, settled.longestRunSeconds]).toEqual([false, 30]);
		const last = (course: typeof settling) => programmeTable(weeks, [course]).at(-1)?.peakShare;
		expect(last(settling)).toBeCloseTo(last(courseWith(30)) ?? 0, 12);
		expect(last(settled)).toBeCloseTo(last(courseWith(30)) ?? 0, 12);
		expect(last(settling)).toBeGreaterThan(last(walker) ?? 1);
	});

	// The slowest run, 5.0 km/h, costs 20.2 mL/kg/min (ACSM): more than 18, and a walk does not.
	test('say of how many they are: a run that asks too much of somebody has no number of theirs', () => {
		const [weak, strong] = [courseWith(18), courseWith(40)];
		const settlingIn = weeksOf({ ...plainWishes, settlingIn: true });
		const rows = programmeTable(settlingIn, [weak, strong, none]);
		const ofStrong = programmeTable(settlingIn, [strong]);
		for (const [nth, week] of settlingIn.entries()) {
			const isWalk = week.runningSeconds === 0;
			expect([rows[nth]?.runners, rows[nth]?.withoutEstimate]).toEqual(isWalk ? [2, 0] : [1, 1]);
			if (!isWalk) expect(rows[nth]?.peakShare).toBe(ofStrong[nth]?.peakShare);
		}
		expect(settlingIn.some(({ runningSeconds }) => runningSeconds === 0)).toBe(true);
		expect(programmeTable(settlingIn, [weak]).at(-1)).toMatchObject({
			runners: 0,
			withoutEstimate: 1,
			peakShare: null,
			meanShare: null
		});
	});

	test('of a group have the median', () => {
		const each = [24, 30, 40].map((capacity) => programmeTable(weeks, [courseWith(capacity)])[3]!);
		const group = programmeTable(
			weeks,
			[24, 30, 40].map((capacity) => courseWith(capacity))
		)[3]!;
		expect(group.peakShare).toBe(each.map(({ peakShare }) => peakShare!).sort((a, b) => a - b)[1]);
	});
});
