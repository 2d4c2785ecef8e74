import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualKinetics } from '$lib/physiology/pulse-kinetics.ts';
import { pulseEdges } from '$lib/physiology/pulse-response.ts';
import { steadyCycle, type Cycle } from '$lib/physiology/steady-cycle.ts';

// Laws of the closed form itself; numbers worked out elsewhere stand with the published values.

const cycles: fc.Arbitrary<Cycle> = fc
	.record({
		runSeconds: fc.double({ min: 5, max: 900, noNaN: true }),
		walkSeconds: fc.double({ min: 5, max: 900, noNaN: true }),
		walkSteadyBpm: fc.double({ min: 80, max: 130, noNaN: true }),
		extraBpm: fc.double({ min: 0, max: 60, noNaN: true })
	})
	.map(({ extraBpm, ...cycle }) => ({ ...cycle, runSteadyBpm: cycle.walkSteadyBpm + extraBpm }));

const usual: Cycle = { runSeconds: 50, walkSeconds: 110, runSteadyBpm: 160, walkSteadyBpm: 104 };

describe('cycle of run and walk, repeated until it settles', () => {
	it('is the run alone without a walk, and the walk alone without a run', () => {
		const run = steadyCycle({ ...usual, walkSeconds: 0 });
		expect(run.peakBpm).toBeCloseTo(160, 9);
		expect(run.meanBpm).toBeCloseTo(160, 9);
		const walk = steadyCycle({ ...usual, runSeconds: 0 });
		expect(walk.troughBpm).toBeCloseTo(104, 9);
		expect(walk.meanBpm).toBeCloseTo(104, 9);
	});

	it('is flat when run and walk are equally hard', () => {
		const flat = steadyCycle({ ...usual, runSteadyBpm: 104 });
		expect(flat.peakBpm).toBeCloseTo(104, 9);
		expect(flat.troughBpm).toBeCloseTo(104, 9);
		expect(flat.meanBpm).toBeCloseTo(104, 9);
	});

	it('refuses a run gentler than the walk, and a cycle that takes no time', () => {
		expect(() => steadyCycle({ ...usual, runSteadyBpm: 100 })).toThrow(RangeError);
		expect(() => steadyCycle({ ...usual, runSeconds: 0, walkSeconds: 0 })).toThrow(RangeError);
		expect(() => steadyCycle({ ...usual, runSeconds: -1 })).toThrow(RangeError);
		expect(() => steadyCycle({ ...usual, walkSeconds: NaN })).toThrow(RangeError);
	});

	it('keeps its digits when it is very short', () => {
		const { meanBpm } = steadyCycle({ ...usual, runSeconds: 1e-6, walkSeconds: 1e-6 });
		// Then the pulse stands still where rise and fall are in balance.
		const balance = (160 / 57.6 + 104 / 90.6) / (1 / 57.6 + 1 / 90.6);
		expect(meanBpm).toBeCloseTo(balance, 3);
	});

	it('peaks at or above its mean, that at or above its trough, all between walk and run', () => {
		fc.assert(
			fc.property(cycles, (cycle) => {
				const { peakBpm, meanBpm, troughBpm } = steadyCycle(cycle);
				expect(cycle.runSteadyBpm + 1e-9).toBeGreaterThanOrEqual(peakBpm);
				expect(peakBpm + 1e-9).toBeGreaterThanOrEqual(meanBpm);
				expect(meanBpm + 1e-9).toBeGreaterThanOrEqual(troughBpm);
				expect(troughBpm + 1e-9).toBeGreaterThanOrEqual(cycle.walkSteadyBpm);
			})
		);
	});

	it('has the mean of its steady pulses by time when rise and fall are equally fast', () => {
		const equal = { risingTauSeconds: 57.6, fallingTauSeconds: 57.6 };
		fc.assert(
			fc.property(cycles, (cycle) => {
				const { runSeconds, walkSeconds, runSteadyBpm, walkSteadyBpm } = cycle;
				const byTime =
					(runSeconds * runSteadyBpm + walkSeconds * walkSteadyBpm) / (runSeconds + walkSeconds);
				expect(steadyCycle(cycle, equal).meanBpm).toBeCloseTo(byTime, 8);
			})
		);
	});

	it('is where going through many rounds, one by one, leads', () => {
		fc.assert(
			fc.property(cycles, (cycle) => {
				const run = { durationSeconds: cycle.runSeconds, steadyBpm: cycle.runSteadyBpm };
				const walk = { durationSeconds: cycle.walkSeconds, steadyBpm: cycle.walkSteadyBpm };
				const rounds = Array.from({ length: 200 }, () => [run, walk]).flat();
				const edges = pulseEdges(rounds, 80, usualKinetics);
				const { peakBpm, troughBpm } = steadyCycle(cycle);
				expect(edges.at(-2)!.bpm).toBeCloseTo(peakBpm, 6);
				expect(edges.at(-1)!.bpm).toBeCloseTo(troughBpm, 6);
			})
		);
	});

	it('peaks lower with a longer walk', () => {
		fc.assert(
			fc.property(cycles, (cycle) => {
				const longer = steadyCycle({ ...cycle, walkSeconds: cycle.walkSeconds + 10 });
				expect(longer.peakBpm).toBeLessThanOrEqual(steadyCycle(cycle).peakBpm + 1e-9);
			})
		);
	});
});
