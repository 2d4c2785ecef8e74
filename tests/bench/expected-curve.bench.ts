import { expectedCurve, type PulseStep } from '../../src/lib/physiology/pulse-response.ts';
import { pulseForecast } from '../../src/lib/physiology/pulse-forecast.ts';
import type { RunnerPulse } from '../../src/lib/physiology/steady-pulse.ts';
import type { BenchCase } from './bench-case.ts';

const PHASES = 40;
const EVERY_SECONDS = 5;

/** Runs of 50 s and walks of 110 s in turn: 3,200 s, 641 points. */
const phases = Array.from({ length: PHASES }, (_, phase) => ({
	durationSeconds: phase % 2 === 0 ? 110 : 50,
	reserveFraction: phase % 2 === 0 ? 0.32 : 0.8
}));
const steps: PulseStep[] = phases.map(({ durationSeconds, reserveFraction }) => ({
	durationSeconds,
	steadyBpm: 70 + reserveFraction * 110
}));
const runner: RunnerPulse = {
	resting: { bpm: 70, spreadBpm: 3 },
	maximum: { bpm: 180, spreadBpm: 11.4 },
	capacity: null
};
const demands = phases.map(({ durationSeconds, reserveFraction }) => ({
	durationSeconds,
	demand: { kind: 'reserve', reserveFraction } as const
}));

const curve = expectedCurve(steps, 80, EVERY_SECONDS);
const reference = {
	name: `one pass over ${curve.length} points`,
	work: () => {
		let sum = 0;
		for (const point of curve) sum += point.bpm;
		return sum;
	}
};

export const cases: readonly BenchCase[] = [
	{
		name: `expected curve, ${PHASES} phases, a point every ${EVERY_SECONDS} s`,
		work: () => expectedCurve(steps, 80, EVERY_SECONDS),
		reference,
		mustReachMicroseconds: 100
	},
	{
		name: 'the same with its spread at every point',
		work: () =>
			pulseForecast(demands, runner, { startReserveFraction: 0.1, everySeconds: EVERY_SECONDS }),
		reference,
		mustReachMicroseconds: 100
	}
];
