import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseSteps } from '$lib/guidance/expected/course-steps.ts';
import type { Course } from '$lib/guidance/expected/course.ts';
import { fitsOf } from '$lib/guidance/expected/fits-of.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { anyCourse, courseWith } from './any-course.ts';

// Our own rules, no source.

const cycle = (runSeconds: number, walkSeconds: number): Outing => ({
	name: 'Outing 1',
	parts: [
		plainPhase('warm-up-walk', 420),
		{
			times: 4,
			phases: [plainPhase('steady-run', runSeconds), plainPhase('recovery-walk', walkSeconds)]
		}
	]
});

function fits(course: Course, outing: Outing) {
	const way = courseSteps(course, outing);
	if (way.kind !== 'steps') throw new Error(way.kind);
	return fitsOf(way.phases);
}

describe('how an outing fits one runner', () => {
	test('without a run or a recovery there is no answer about them', () => {
		const walk: Outing = { name: 'Walk', parts: [plainPhase('brisk-walk', 600)] };
		expect(fits(courseWith(30), walk)).toEqual({
			longestRun: null,
			shortestRecovery: null,
			isOverTop: false
		});
		const walker = courseWith(30, { run: false, ceiling: 'moderate' });
		expect(fits(walker, cycle(50, 110)).longestRun).toBeNull();
	});

	test('a run that settles inside the band has no limit', () => {
		expect(fits(courseWith(45), cycle(50, 110)).longestRun).toEqual({ kind: 'no-limit' });
	});

	test('a walk too fast to recover in never brings the pulse back', () => {
		const outing: Outing = {
			name: 'Fast',
			parts: [plainPhase('steady-run', 60), { ...plainPhase('recovery-walk', 60), speedKmh: 7 }]
		};
		expect(fits(courseWith(24), outing).shortestRecovery).toEqual({ kind: 'never' });
	});

	test('runs without rest between them leave no run inside the band', () => {
		expect(fits(courseWith(24), cycle(300, 5)).longestRun).toEqual({ kind: 'none' });
	});

	// 24 mL/kg/min: a run at 5.0 km/h takes 81 % of the reserve, and nears it within minutes.
	test('more than is open in the first weeks is told', () => {
		const beginner = courseWith(24, { startEffort: 'moderate' }, [30, 28, 15, 12, 9, 6, 3]);
		const without = { ...beginner, longestRunSeconds: null };
		expect(fits(without, cycle(20, 200)).isOverTop).toBe(false);
		expect(fits(without, cycle(600, 30)).isOverTop).toBe(true);
	});

	test('what is told for all runs is the strictest of what is told for each', () => {
		fc.assert(
			fc.property(
				anyCourse,
				fc.integer({ min: 5, max: 300 }),
				fc.integer({ min: 5, max: 300 }),
				(course, run, walk) => {
					const way = courseSteps(course, cycle(run, walk));
					fc.pre(way.kind === 'steps');
					const { longestRun } = fitsOf(way.phases);
					for (const { fit } of way.phases) {
						if (fit.kind !== 'run') continue;
						const own = fit.longest.kind === 'seconds' ? fit.longest.seconds : Infinity;
						if (longestRun?.kind === 'seconds') {
							expect(own).toBeGreaterThanOrEqual(longestRun.seconds);
						}
						if (fit.longest.kind === 'none') expect(longestRun).toEqual({ kind: 'none' });
						if (longestRun?.kind === 'no-limit') expect(fit.isTooLong).toBe(false);
					}
				}
			)
		);
	});
});
