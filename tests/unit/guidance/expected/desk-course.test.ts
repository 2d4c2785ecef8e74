import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Course, ShareRange } from '$lib/guidance/expected/course.ts';
import { deskCourse } from '$lib/guidance/expected/desk-course.ts';
import { phaseKinds, type PhaseKind } from '$lib/outing/phase.ts';

// Our own rule, no source.

const share = fc.double({ min: 0.01, max: 1, noNaN: true });
const range: fc.Arbitrary<ShareRange> = fc
	.tuple(fc.option(share), share)
	.map(([low, high]) => ({ low: low !== null && low < high ? low : null, high }));
const course: fc.Arbitrary<Course> = fc.record({
	kind: fc.constant('course' as const),
	runs: fc.boolean(),
	isSettlingIn: fc.boolean(),
	longestRunSeconds: fc.constant(null),
	ranges: fc
		.tuple(...phaseKinds.map(() => range))
		.map(
			(all) =>
				Object.fromEntries(phaseKinds.map((kind, i) => [kind, all[i]])) as Record<
					PhaseKind,
					ShareRange
				>
		),
	top: fc.constant(null),
	restingSpread: share,
	maximumSpread: share,
	capacity: fc.option(
		fc.record({
			mlPerKgPerMinute: fc.double({ min: 15, max: 60, noNaN: true }),
			spread: fc.double({ min: 1, max: 6, noNaN: true }),
			basis: fc.constant('walk-check' as const)
		})
	)
});

describe('the course of a runner on a coach’s page', () => {
	it('holds no more than hundredths of the reserve and whole millilitres', () => {
		fc.assert(
			fc.property(course, (exact) => {
				const numbers = JSON.stringify(deskCourse(exact)).match(/-?\d+(\.\d+)?(e-?\d+)?/g) ?? [];
				expect(numbers.filter((one) => !/^\d+(\.\d{1,2})?$/.test(one))).toEqual([]);
			})
		);
	});

	it('does not say where a capacity comes from', () => {
		fc.assert(
			fc.property(course, (exact) => {
				const { capacity } = deskCourse(exact);
				expect(Object.keys(capacity ?? {})).toEqual(
					capacity === null ? [] : ['mlPerKgPerMinute', 'spread']
				);
			})
		);
	});

	it('never has a higher edge than the runner’s own, nor one that is lower by a hundredth', () => {
		fc.assert(
			fc.property(course, (exact) => {
				const { ranges } = deskCourse(exact);
				for (const kind of phaseKinds) {
					const lost = exact.ranges[kind].high - ranges[kind].high;
					expect(lost).toBeGreaterThan(-1e-8);
					expect(lost).toBeLessThan(0.01);
					expect(ranges[kind].low ?? -1).toBeLessThan(ranges[kind].high);
				}
			})
		);
	});

	it('leaves hundredths as they are', () => {
		for (let percent = 1; percent <= 100; percent += 1) {
			const ranges = Object.fromEntries(
				phaseKinds.map((kind) => [kind, { low: null, high: percent / 100 }])
			) as Course['ranges'];
			const exact: Course = {
				...{ kind: 'course', runs: true, isSettlingIn: false, longestRunSeconds: null },
				...{ ranges, top: null, restingSpread: 0.03, maximumSpread: 0.1, capacity: null }
			};
			expect(deskCourse(exact)).toEqual(exact);
		}
	});
});
