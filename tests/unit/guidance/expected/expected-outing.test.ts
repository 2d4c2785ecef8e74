import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseSteps } from '$lib/guidance/expected/course-steps.ts';
import { expectedOuting, type Expected } from '$lib/guidance/expected/expected-outing.ts';
import { inBeats } from '$lib/guidance/expected/in-beats.ts';
import { pulseBasis } from '$lib/guidance/pulse-basis.ts';
import type { Outing, OutingPart } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { pulseForecast } from '$lib/physiology/pulse-forecast.ts';
import { anyOuting } from '../../outing/any-outing.ts';
import { wideOpen } from '../open-accesses.ts';
import { shortenRuns } from '$lib/outing/shorten-runs.ts';
import { anyCourse, courseWith, profileWith } from './any-course.ts';

const outing = (...parts: OutingPart[]): Outing => ({ name: 'Outing 1', parts });
const walk = plainPhase('recovery-walk', 110);
const run = plainPhase('steady-run', 50);
const warmUp = plainPhase('warm-up-walk', 420);
const mixed = outing(warmUp, { times: 4, phases: [run, walk] }, plainPhase('cool-down-walk', 360));

function expected(
	...[course, of, every = 30]: [Parameters<typeof expectedOuting>[0], Outing, number?]
) {
	const answer = expectedOuting(course, of, every);
	if (answer.kind !== 'expected') throw new Error(answer.kind);
	return answer;
}

describe('no curve', () => {
	test('is drawn where there is no course', () => {
		const none = { kind: 'no-course', why: 'pulse-off' } as const;
		expect(expectedOuting(none, mixed, 5)).toBe(none);
	});

	test('is drawn of nothing', () => {
		expect(expectedOuting(courseWith(null), outing(), 5)).toEqual({ kind: 'empty' });
	});

	// Capacity 18: a run of 5.0 km/h takes 20.17 mL/kg/min, more than the whole of it.
	test('is given where a run is more than the whole reserve', () => {
		expect(expectedOuting(courseWith(18), mixed, 5)).toEqual({
			kind: 'no-estimate',
			reason: 'over-reserve',
			phaseIndex: 1
		});
	});
});

describe('a curve', () => {
	test('in beats is the forecast of a runner with these beats', () => {
		const access = { ...wideOpen };
		const basis = pulseBasis(access, profileWith(30));
		if (basis.kind !== 'on') throw new Error(basis.kind);
		const { points, peak, mean, phases } = expected(courseWith(30), mixed);
		const capacity = { mlPerKgPerMinute: 30, spread: 0.056 * 30, basis: 'measured' } as const;
		const forecast = pulseForecast(
			phases.map(({ phase, demand }) => ({ durationSeconds: phase.seconds, demand })),
			{ resting: basis.resting, maximum: basis.maximum, capacity },
			{ startReserveFraction: 0.1, everySeconds: 30 }
		);
		if (forecast.kind !== 'forecast') throw new Error(forecast.kind);
		points.forEach((point, nth) => {
			const { bpm, spreadBpm } = inBeats(point, basis);
			expect(bpm).toBeCloseTo(forecast.points[nth]!.bpm, 9);
			expect(spreadBpm).toBeCloseTo(forecast.points[nth]!.spreadBpm, 9);
		});
		expect(inBeats(peak, basis).bpm).toBeCloseTo(forecast.peak.bpm, 9);
		expect(inBeats(mean, basis).spreadBpm).toBeCloseTo(forecast.mean.spreadBpm, 9);
	});

	test('of a walker has brisk walks, and says so', () => {
		const walker = courseWith(null, { run: false, ceiling: 'moderate' });
		const { phases, walksInstead } = expected(walker, mixed);
		expect(phases[1]?.phase.kind).toBe('brisk-walk');
		expect(walksInstead).toBe(true);
		expect(expected(walker, outing(warmUp)).walksInstead).toBe(false);
	});

	test('is above what is open where a written speed asks more of a walker than 59 %', () => {
		const walker = courseWith(20, { run: false, ceiling: 'moderate' });
		const brisk = { ...plainPhase('brisk-walk', 600), speedKmh: 7 };
		// 7 km/h is 116.67 m/min: 11.67 of a reserve of 16.5, or 70.7 % (ACSM walking equation).
		const { phases } = expected(walker, outing(brisk));
		expect(phases[0]).toMatchObject({ isOverTop: true, fit: { kind: 'walk', isTooFast: true } });
	});
});

describe('for every runner and outing', () => {
	const check = (law: (answer: Expected, of: Outing) => void) =>
		fc.assert(
			fc.property(anyCourse, anyOuting, (course, any) => {
				const answer = expectedOuting(course, any, 10);
				fc.pre(answer.kind === 'expected');
				law(answer, any);
			}),
			{ numRuns: 200 }
		);

	test('the mean lies under the peak, and both between rest and maximum', () => {
		check(({ mean, peak }) => {
			expect(mean.share).toBeLessThanOrEqual(peak.share + 1e-12);
			expect(mean.share).toBeGreaterThan(0);
			expect(peak.share).toBeLessThanOrEqual(1);
		});
	});

	test('the intensities add up to the whole time', () => {
		check(({ secondsByIntensity, points }) => {
			const sum = Object.values(secondsByIntensity).reduce((one, other) => one + other, 0);
			expect(sum).toBeCloseTo(points.at(-1)!.seconds, 6);
		});
	});

	test('the peak of the outing is the highest of its phases', () => {
		check(({ peak, phases }) => {
			expect(Math.max(...phases.map(({ peakShare }) => peakShare))).toBeCloseTo(peak.share, 12);
		});
	});

	test('splitting a phase changes neither peak nor mean', () => {
		fc.assert(
			fc.property(anyCourse, anyOuting, (course, any) => {
				const halved: Outing = {
					...any,
					parts: any.parts.flatMap((part) => {
						if ('times' in part || part.seconds < 20) return [part];
						return [
							{ ...part, seconds: 9 },
							{ ...part, seconds: part.seconds - 9 }
						];
					})
				};
				const [one, two] = [expectedOuting(course, any, 10), expectedOuting(course, halved, 10)];
				fc.pre(one.kind === 'expected' && two.kind === 'expected');
				expect(two.peak.share).toBeCloseTo(one.peak.share, 12);
				expect(two.mean.share).toBeCloseTo(one.mean.share, 12);
			}),
			{ numRuns: 200 }
		);
	});

	test('short runs are expected as if the outing were written so', () => {
		fc.assert(
			fc.property(anyCourse, anyOuting, fc.integer({ min: 30, max: 120 }), (course, any, limit) => {
				const own = expectedOuting({ ...course, longestRunSeconds: limit }, any, 10);
				const written = course.runs ? shortenRuns(any, limit) : any;
				expect(own).toEqual(expectedOuting(course, written, 10));
			})
		);
		const gentle = { startEffort: 'moderate' } as const;
		expect(courseWith(null, gentle, [14, 12, 9, 6, 3, 1]).longestRunSeconds).toBe(30);
		expect(courseWith(null, gentle, [126, 124, 121, 118, 115, 112]).longestRunSeconds).toBe(null);
	});

	test('a longer recovery never raises what comes after it', () => {
		fc.assert(
			fc.property(
				anyCourse,
				fc.integer({ min: 5, max: 300 }),
				fc.nat({ max: 300 }),
				(course, seconds, more) => {
					const way = (long: number) =>
						courseSteps(course, outing(warmUp, run, { ...walk, seconds: long }, run));
					const [one, two] = [way(seconds), way(seconds + more)];
					fc.pre(one.kind === 'steps' && two.kind === 'steps');
					// Where the walk itself lifts the pulse, more of it does too.
					fc.pre(one.phases[2]!.endShare <= one.phases[2]!.startShare);
					expect(two.phases[3]!.endShare).toBeLessThanOrEqual(one.phases[3]!.endShare + 1e-12);
				}
			)
		);
	});
});

describe('what fits', () => {
	test('a run of the length that fits ends at the upper edge, found here by halving', () => {
		fc.assert(
			fc.property(anyCourse, fc.integer({ min: 5, max: 600 }), (course, seconds) => {
				const through = courseSteps(course, outing(warmUp, { ...run, seconds }));
				fc.pre(through.kind === 'steps');
				const way = through.phases[1]!;
				fc.pre(way.fit.kind === 'run' && way.fit.longest.kind === 'seconds');
				const longest = way.fit.longest.seconds;
				const endAfter = (length: number) =>
					way.steadyShare + (way.startShare - way.steadyShare) * Math.exp(-length / 57.6);
				let [low, high] = [0, 20_000];
				for (let halving = 0; halving < 80; halving += 1) {
					const middle = (low + high) / 2;
					if (endAfter(middle) < way.range.high) low = middle;
					else high = middle;
				}
				expect(longest).toBeCloseTo(low, 6);
				expect(way.fit.isTooLong).toBe(seconds > low + 1e-9);
			})
		);
	});

	test('a run that starts above the edge fits at no length, and one that settles under it at any', () => {
		const course = courseWith(25);
		const short = { ...plainPhase('recovery-walk', 5) };
		const through = courseSteps(course, outing(warmUp, { ...run, seconds: 300 }, short, run));
		if (through.kind !== 'steps') throw new Error('there is an estimate');
		expect(through.phases[3]!.fit).toMatchObject({ longest: { kind: 'none' }, isTooLong: true });
		expect(through.phases[2]!.fit).toMatchObject({ kind: 'recovery', isTooShort: true });
		const free = courseSteps(courseWith(null), outing(warmUp, run));
		expect(free).toMatchObject({
			phases: [{}, { fit: { longest: { kind: 'no-limit' }, isTooLong: false } }]
		});
	});

	test('never is an answer: a walk that is itself too fast brings nothing back', () => {
		// Capacity 18: 6.5 km/h takes 10.83 of a reserve of 14.5, or 74.7 %, over the 50 % of a recovery.
		const fast = { ...walk, speedKmh: 6.5 };
		const through = courseSteps(
			courseWith(18),
			outing(plainPhase('brisk-walk', 600), { ...walk, ...fast }, fast)
		);
		if (through.kind !== 'steps') throw new Error('there is an estimate');
		expect(through.phases[2]!.fit).toEqual({
			kind: 'recovery',
			shortest: { kind: 'never' },
			isTooShort: true
		});
	});
});
