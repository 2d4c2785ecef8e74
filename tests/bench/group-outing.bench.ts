import type { Course } from '../../src/lib/guidance/expected/course.ts';
import { groupOuting } from '../../src/lib/guidance/expected/group-outing.ts';
import { phaseTargets } from '../../src/lib/outing/phase.ts';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import type { Outing } from '../../src/lib/outing/outing.ts';
import type { BenchCase } from './bench-case.ts';

const RUNNERS = 200;
const PHASES = 40;
const EVERY_SECONDS = 20;

/** Runs of 50 s and walks of 110 s in turn: 3,200 s. */
const outing: Outing = {
	name: 'Outing 12',
	parts: Array.from({ length: PHASES }, (_, phase) =>
		phase % 2 === 0 ? plainPhase('recovery-walk', 110) : plainPhase('steady-run', 50)
	)
};
const ranges = Object.fromEntries(
	Object.values(phaseTargets).map(({ kind, reserve }) => [kind, reserve])
) as Course['ranges'];
const courses = Array.from({ length: RUNNERS }, (_, runner): Course => ({
	kind: 'course',
	runs: runner % 7 !== 0,
	isSettlingIn: false,
	longestRunSeconds: null,
	ranges,
	top: null,
	restingSpread: 0.03,
	maximumSpread: 0.1,
	capacity: { mlPerKgPerMinute: 24 + (runner % 30), spread: 2 }
}));

const points = RUNNERS * (((110 + 50) * (PHASES / 2)) / EVERY_SECONDS + 1);
const numbers = Float64Array.from({ length: points }, (_, nth) => (nth * 7919) % 1000);

export const cases: readonly BenchCase[] = [
	{
		name: `a group of ${RUNNERS} through an outing of ${PHASES} phases, and what to change`,
		work: () => groupOuting(courses, outing, EVERY_SECONDS),
		reference: {
			name: `sorting ${points} numbers`,
			work: () => Float64Array.from(numbers).sort()
		},
		// A frame of a screen at 60 Hz is 16 ms, and drawing needs most of it.
		mustReachMicroseconds: 5000
	}
];
