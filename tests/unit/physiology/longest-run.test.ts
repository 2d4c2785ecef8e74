import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestRun, longestRunInCycle } from '$lib/physiology/longest-run.ts';
import { pulseAfter } from '$lib/physiology/pulse-kinetics.ts';
import { expectedPeak } from '$lib/physiology/pulse-response.ts';
import { steadyCycle } from '$lib/physiology/steady-cycle.ts';
import { bisected } from './bisected.ts';

describe('longest run under an edge', () => {
	it('is none above the edge, whatever the run', () => {
		expect(longestRun({ startBpm: 141, steadyRunBpm: 160, upperEdgeBpm: 140 }).kind).toBe('none');
		expect(longestRun({ startBpm: 141, steadyRunBpm: 100, upperEdgeBpm: 140 }).kind).toBe('none');
	});

	it('is none at the edge, unless the run does not lift the pulse', () => {
		expect(longestRun({ startBpm: 140, steadyRunBpm: 160, upperEdgeBpm: 140 }).kind).toBe('none');
		expect(longestRun({ startBpm: 140, steadyRunBpm: 140, upperEdgeBpm: 140 }).kind).toBe(
			'no-limit'
		);
	});

	it('has no limit when the pulse settles at the edge or below', () => {
		for (const steadyRunBpm of [139, 140]) {
			expect(longestRun({ startBpm: 100, steadyRunBpm, upperEdgeBpm: 140 })).toEqual({
				kind: 'no-limit'
			});
		}
	});

	it('refuses what is not a pulse', () => {
		expect(() => longestRun({ startBpm: NaN, steadyRunBpm: 160, upperEdgeBpm: 140 })).toThrow(
			RangeError
		);
		expect(() => longestRun({ startBpm: 100, steadyRunBpm: Infinity, upperEdgeBpm: 140 })).toThrow(
			RangeError
		);
	});

	it('is where halving the time on the curve finds the edge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 70, max: 130, noNaN: true }),
				fc.double({ min: 1, max: 30, noNaN: true }),
				fc.double({ min: 1, max: 40, noNaN: true }),
				(startBpm, toEdge, beyond) => {
					const upperEdgeBpm = startBpm + toEdge;
					const steadyRunBpm = upperEdgeBpm + beyond;
					const answer = longestRun({ startBpm, steadyRunBpm, upperEdgeBpm });
					if (answer.kind !== 'seconds') throw new Error(answer.kind);
					const found = bisected(
						(seconds) => pulseAfter(startBpm, steadyRunBpm, seconds),
						upperEdgeBpm
					);
					expect(answer.seconds).toBeCloseTo(found, 6);
				}
			)
		);
	});
});

describe('longest run of a settled cycle', () => {
	const cycle = { walkSeconds: 110, walkSteadyBpm: 104, runSteadyBpm: 160, upperEdgeBpm: 138 };

	it('is none when the walk alone holds the pulse at the edge or above', () => {
		expect(longestRunInCycle({ ...cycle, walkSteadyBpm: 138 }).kind).toBe('none');
		expect(longestRunInCycle({ ...cycle, walkSteadyBpm: 150 }).kind).toBe('none');
	});

	it('is none without a walk, as the pulse never leaves the edge', () => {
		expect(longestRunInCycle({ ...cycle, walkSeconds: 0 }).kind).toBe('none');
	});

	it('has no limit when the run itself settles under the edge', () => {
		expect(longestRunInCycle({ ...cycle, runSteadyBpm: 138 }).kind).toBe('no-limit');
	});

	it('refuses a walk that takes less than no time', () => {
		expect(() => longestRunInCycle({ ...cycle, walkSeconds: -1 })).toThrow(RangeError);
	});

	it('is where halving the time on the settled cycle finds the edge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 10, max: 600, noNaN: true }),
				fc.double({ min: 85, max: 125, noNaN: true }),
				fc.double({ min: 2, max: 30, noNaN: true }),
				fc.double({ min: 2, max: 40, noNaN: true }),
				(walkSeconds, walkSteadyBpm, toEdge, beyond) => {
					const upperEdgeBpm = walkSteadyBpm + toEdge;
					const runSteadyBpm = upperEdgeBpm + beyond;
					const answer = longestRunInCycle({
						walkSeconds,
						walkSteadyBpm,
						runSteadyBpm,
						upperEdgeBpm
					});
					if (answer.kind !== 'seconds') throw new Error(answer.kind);
					const peak = (runSeconds: number) =>
						steadyCycle({ runSeconds, walkSeconds, runSteadyBpm, walkSteadyBpm }).peakBpm;
					expect(answer.seconds).toBeCloseTo(bisected(peak, upperEdgeBpm), 6);
				}
			)
		);
	});

	it('keeps the peak of a whole outing at the edge, however many runs', () => {
		const answer = longestRunInCycle(cycle);
		if (answer.kind !== 'seconds') throw new Error(answer.kind);
		const run = { durationSeconds: answer.seconds, steadyBpm: cycle.runSteadyBpm };
		const walk = { durationSeconds: cycle.walkSeconds, steadyBpm: cycle.walkSteadyBpm };
		const outing = Array.from({ length: 30 }, () => [run, walk]).flat();
		const peak = expectedPeak(outing, 90).bpm;
		expect(peak).toBeLessThanOrEqual(cycle.upperEdgeBpm + 1e-9);
		expect(peak).toBeCloseTo(cycle.upperEdgeBpm, 6);
	});
});
