import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pulseAfter } from '$lib/physiology/pulse-kinetics.ts';
import { shortestRecovery, shortestRecoveryInCycle } from '$lib/physiology/shortest-recovery.ts';
import { steadyCycle } from '$lib/physiology/steady-cycle.ts';
import { bisected } from './bisected.ts';

describe('shortest recovery', () => {
	it('takes no time when the pulse is in the band already', () => {
		for (const startBpm of [120, 100]) {
			expect(shortestRecovery({ startBpm, steadyWalkBpm: 104, upperEdgeBpm: 120 })).toEqual({
				kind: 'seconds',
				seconds: 0
			});
		}
	});

	it('is never when the walk holds the pulse at the edge or above', () => {
		for (const steadyWalkBpm of [120, 121, 170]) {
			expect(shortestRecovery({ startBpm: 150, steadyWalkBpm, upperEdgeBpm: 120 })).toEqual({
				kind: 'never'
			});
		}
	});

	it('refuses what is not a pulse', () => {
		expect(() =>
			shortestRecovery({ startBpm: 150, steadyWalkBpm: NaN, upperEdgeBpm: 120 })
		).toThrow(RangeError);
	});

	it('is where halving the time on the falling curve finds the edge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 85, max: 120, noNaN: true }),
				fc.double({ min: 1, max: 25, noNaN: true }),
				fc.double({ min: 1, max: 40, noNaN: true }),
				(steadyWalkBpm, aboveWalk, aboveEdge) => {
					const upperEdgeBpm = steadyWalkBpm + aboveWalk;
					const startBpm = upperEdgeBpm + aboveEdge;
					const answer = shortestRecovery({ startBpm, steadyWalkBpm, upperEdgeBpm });
					if (answer.kind === 'never') throw new Error('never');
					const found = bisected(
						(seconds) => -pulseAfter(startBpm, steadyWalkBpm, seconds),
						-upperEdgeBpm
					);
					expect(answer.seconds).toBeCloseTo(found, 6);
				}
			)
		);
	});

	it('is never exactly where halving the time finds no moment at the edge, however late', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 85, max: 150, noNaN: true }),
				fc.double({ min: 90, max: 140, noNaN: true }),
				fc.double({ min: 0.5, max: 40, noNaN: true }),
				(steadyWalkBpm, upperEdgeBpm, aboveEdge) => {
					const startBpm = upperEdgeBpm + aboveEdge;
					// Nearer than a thousandth of a beat the search ends before the curve does.
					fc.pre(Math.abs(steadyWalkBpm - upperEdgeBpm) > 0.001);
					const { kind } = shortestRecovery({ startBpm, steadyWalkBpm, upperEdgeBpm });
					const latest = pulseAfter(startBpm, steadyWalkBpm, 20_000);
					expect(kind === 'never').toBe(latest > upperEdgeBpm);
				}
			)
		);
	});

	it('ends exactly at the edge, and a second sooner has not reached it', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 85, max: 120, noNaN: true }),
				fc.double({ min: 1, max: 25, noNaN: true }),
				fc.double({ min: 1, max: 40, noNaN: true }),
				(steadyWalkBpm, aboveWalk, aboveEdge) => {
					const upperEdgeBpm = steadyWalkBpm + aboveWalk;
					const startBpm = upperEdgeBpm + aboveEdge;
					const answer = shortestRecovery({ startBpm, steadyWalkBpm, upperEdgeBpm });
					if (answer.kind === 'never') throw new Error('never');
					expect(pulseAfter(startBpm, steadyWalkBpm, answer.seconds)).toBeCloseTo(upperEdgeBpm, 9);
					const sooner = Math.max(0, answer.seconds - 1);
					expect(pulseAfter(startBpm, steadyWalkBpm, sooner)).toBeGreaterThan(upperEdgeBpm);
				}
			)
		);
	});
});

describe('shortest recovery of a settled cycle', () => {
	const cycle = { runSeconds: 50, runSteadyBpm: 160, walkSteadyBpm: 104, upperEdgeBpm: 118 };

	it('is never when the walk is too fast', () => {
		expect(shortestRecoveryInCycle({ ...cycle, walkSteadyBpm: 118 }).kind).toBe('never');
	});

	it('takes no time when there is no run', () => {
		expect(shortestRecoveryInCycle({ ...cycle, runSeconds: 0 })).toEqual({
			kind: 'seconds',
			seconds: 0
		});
	});

	it('gives the cycle whose trough is at the edge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 10, max: 600, noNaN: true }),
				fc.double({ min: 106, max: 150, noNaN: true }),
				(runSeconds, upperEdgeBpm) => {
					const answer = shortestRecoveryInCycle({ ...cycle, runSeconds, upperEdgeBpm });
					if (answer.kind === 'never') throw new Error('never');
					const { troughBpm } = steadyCycle({ ...cycle, runSeconds, walkSeconds: answer.seconds });
					expect(troughBpm).toBeCloseTo(upperEdgeBpm, 6);
				}
			)
		);
	});

	it('is where halving the time on the settled cycle finds the edge', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 10, max: 600, noNaN: true }),
				fc.double({ min: 106, max: 150, noNaN: true }),
				(runSeconds, upperEdgeBpm) => {
					const answer = shortestRecoveryInCycle({ ...cycle, runSeconds, upperEdgeBpm });
					if (answer.kind === 'never') throw new Error('never');
					const trough = (walkSeconds: number) =>
						steadyCycle({ ...cycle, runSeconds, walkSeconds }).troughBpm;
					const found = bisected((seconds) => -trough(seconds), -upperEdgeBpm);
					expect(answer.seconds).toBeCloseTo(found, 5);
				}
			)
		);
	});

	it('grows with the run before it', () => {
		const secondsAfter = (runSeconds: number) => {
			const answer = shortestRecoveryInCycle({ ...cycle, runSeconds });
			return answer.kind === 'seconds' ? answer.seconds : NaN;
		};
		expect(secondsAfter(90)).toBeGreaterThan(secondsAfter(60));
		expect(secondsAfter(60)).toBeGreaterThan(secondsAfter(30));
	});
});
