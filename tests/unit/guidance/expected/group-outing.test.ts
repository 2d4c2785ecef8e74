import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jStat } from 'jstat';
import { quantileSorted } from 'simple-statistics';
import { courseSteps } from '$lib/guidance/expected/course-steps.ts';
import { groupOuting } from '$lib/guidance/expected/group-outing.ts';
import { change } from '$lib/outing/edit/edits.ts';
import { phaseAt } from '$lib/outing/edit/place.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { expectedCurve, type PulseStep } from '$lib/physiology/pulse-response.ts';
import { anyOuting } from '../../outing/any-outing.ts';
import { anyCourse, courseWith } from './any-course.ts';

const outing: Outing = {
	name: 'Outing 1',
	parts: [
		plainPhase('warm-up-walk', 420),
		{ times: 4, phases: [plainPhase('steady-run', 80), plainPhase('recovery-walk', 110)] },
		plainPhase('cool-down-walk', 360)
	]
};
/** Capacities from 24 to 50: for the first few a run of 5.0 km/h is above their band. */
const courses = [24, 26, 28, 35, 40, 45, 50].map((capacity) => courseWith(capacity));

describe('a group', () => {
	test('of nobody has no curve and nothing to change', () => {
		expect(groupOuting([], outing, 20)).toMatchObject({ drawn: 0, points: [], changes: [] });
		expect(groupOuting(courses, { name: 'One', parts: [] }, 20).points).toEqual([]);
	});

	test('counts who has no curve, by reason, and who walks', () => {
		const group = groupOuting(
			[
				...courses,
				courseWith(18),
				courseWith(null, { run: false, ceiling: 'moderate' }),
				{ kind: 'no-course', why: 'closed' },
				{ kind: 'no-course', why: 'pulse-off' },
				{ kind: 'no-course', why: 'pulse-off' },
				{ kind: 'no-course', why: 'pulse-not-known' }
			],
			outing,
			20
		);
		expect(group).toMatchObject({
			drawn: 8,
			walkInstead: 1,
			notDrawn: { closed: 1, 'pulse-off': 2, 'pulse-not-known': 1, 'over-reserve': 1 }
		});
	});

	// jStat's two ones make it type 7 of Hyndman and Fan 1996; it takes no fewer than two values.
	test('has at every moment the quantiles of its runners’ own curves', () => {
		fc.assert(
			fc.property(fc.array(anyLimited, { minLength: 2, maxLength: 9 }), anyOuting, (group, any) => {
				const ways = group.flatMap((course) => {
					const way = courseSteps(course, any);
					return way.kind === 'steps' ? [way.steps] : [];
				});
				fc.pre(ways.length > 1);
				const { points } = groupOuting(group, any, 20);
				for (const [n, { seconds, low, median, high }] of points.entries()) {
					if (n % 20 > 0) continue;
					const shares = ways.map(
						(steps) => expectedCurve(cut(steps, seconds), 0.1, 1e6).at(-1)!.bpm
					);
					for (const [part, share] of [
						[0.16, low],
						[0.5, median],
						[0.84, high]
					] as const) {
						expect(share).toBeCloseTo(jStat.quantiles(shares, [part], 1, 1)[0]!, 9);
					}
				}
			}),
			{ numRuns: 40 }
		);
	});

	test('has a point at the end of each phase, where the pulse turns, and none twice', () => {
		const moments = groupOuting(courses, outing, 20).points.map(({ seconds }) => seconds);
		for (const end of [420, 500, 610, 690, 800, 1180, 1540]) expect(moments).toContain(end);
		expect(moments).toEqual([...new Set(moments)].sort((one, other) => one - other));
	});

	// simple-statistics places a quantile otherwise than in between, so only the median is compared.
	test('has the median of its runners at every point', () => {
		const { points } = groupOuting(courses, outing, 20);
		const last = points.at(-1)!;
		const ends = courses.map((course) => {
			const way = courseSteps(course, outing);
			return way.kind === 'steps' ? way.phases.at(-1)!.endShare : NaN;
		});
		expect(last.seconds).toBe(1540);
		expect(last.median).toBeCloseTo(
			quantileSorted(
				ends.sort((a, b) => a - b),
				0.5
			),
			12
		);
	});

	test('of one runner has that runner’s curve, edge and middle alike', () => {
		const { points } = groupOuting([courseWith(40)], outing, 20);
		for (const { low, median, high } of points) expect([low, high]).toEqual([median, median]);
	});
});

/** Courses whose runs are short for now among others. */
const anyLimited = fc
	.record({ course: anyCourse, longestRunSeconds: fc.constantFrom(null, 30, 45) })
	.map(({ course, longestRunSeconds }) => ({ ...course, longestRunSeconds }));

/** What of an outing is done after some seconds. */
function cut(steps: readonly PulseStep[], seconds: number): PulseStep[] {
	let left = seconds;
	return steps.map(({ durationSeconds, steadyBpm }) => {
		const done = Math.min(durationSeconds, left);
		left -= done;
		return { durationSeconds: done, steadyBpm };
	});
}

describe('what to change', () => {
	test('says for how many a run is too long, out of those who run, and what fits all', () => {
		const walker = courseWith(null, { run: false, ceiling: 'moderate' });
		const { changes } = groupOuting([...courses, walker], outing, 20);
		const [tooLong] = changes;
		expect(tooLong).toMatchObject({
			kind: 'run-too-long',
			place: { part: 1, phase: 0 },
			runners: 7,
			misfits: 2
		});
	});

	test('what fits all, put in its place, fits all, and five seconds more do not', () => {
		fc.assert(
			fc.property(fc.array(anyCourse, { minLength: 1, maxLength: 6 }), (group) => {
				const first = groupOuting(group, outing, 60).changes.find(
					({ kind }) => kind === 'run-too-long'
				);
				fc.pre(first?.kind === 'run-too-long' && first.fitsAllSeconds !== null);
				const { place, fitsAllSeconds } = first;
				expect(fitsAllSeconds % 5).toBe(0);
				expect(fitsAllSeconds).toBeLessThan(phaseAt(outing, place).seconds);
				const mended = change(outing, place, { seconds: fitsAllSeconds });
				const left = groupOuting(group, mended, 60).changes.filter(
					({ kind }) => kind === 'run-too-long'
				);
				expect(left).toEqual([]);
			})
		);
	});

	test('a recovery that is long enough for all is no longer told', () => {
		const short: Outing = change(outing, { part: 1, phase: 1 }, { seconds: 20 });
		const weak = [courseWith(24), courseWith(26)];
		const told = groupOuting(weak, short, 60).changes.find(
			({ kind }) => kind === 'recovery-too-short'
		);
		if (told?.kind !== 'recovery-too-short' || told.fitsAllSeconds === null)
			throw new Error('told');
		expect(told).toMatchObject({ runners: 2, misfits: 2, place: { part: 1, phase: 1 } });
		const mended = change(short, told.place, { seconds: told.fitsAllSeconds });
		const left = groupOuting(weak, mended, 60).changes;
		expect(left.filter(({ kind }) => kind === 'recovery-too-short')).toEqual([]);
	});

	test('a walk that is itself too fast for somebody has no length that fits all', () => {
		const fast: Outing = {
			name: 'Fast',
			parts: [
				{ ...plainPhase('brisk-walk', 600), speedKmh: 7 },
				{ ...plainPhase('recovery-walk', 60), speedKmh: 7 }
			]
		};
		expect(groupOuting([courseWith(20), courseWith(60)], fast, 60).changes).toEqual([
			{ kind: 'walk-too-fast', place: { part: 0, phase: null }, runners: 2, misfits: 1 },
			{
				kind: 'recovery-too-short',
				place: { part: 1, phase: null },
				runners: 2,
				misfits: 1,
				fitsAllSeconds: null
			}
		]);
	});

	test('never more misfits than runners, and none told that fit', () => {
		fc.assert(
			fc.property(fc.array(anyCourse, { maxLength: 4 }), anyOuting, (group, any) => {
				for (const { runners, misfits } of groupOuting(group, any, 60).changes) {
					expect(misfits).toBeGreaterThan(0);
					expect(misfits).toBeLessThanOrEqual(runners);
				}
			}),
			{ numRuns: 50 }
		);
	});
});
